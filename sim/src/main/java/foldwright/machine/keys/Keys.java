// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** The keys of a record class, and the check of its values against them. */
public final class Keys {
    private static final ClassValue<List<KeyOf>> CACHE =
            new ClassValue<>() {
                @Override
                protected List<KeyOf> computeValue(Class<?> type) {
                    List<KeyOf> keys = new ArrayList<>();
                    for (RecordComponent component : type.getRecordComponents()) {
                        keys.add(new KeyOf(component));
                    }
                    return List.copyOf(keys);
                }
            };

    private Keys() {}

    /** The keys of a record class in the order of its components. */
    public static List<KeyOf> of(Class<?> type) {
        return CACHE.get(type);
    }

    /**
     * Checks the values of a record, given in the order of its components; called first in every
     * compact constructor.
     *
     * @throws IllegalArgumentException naming record, key, value and what is allowed
     */
    public static void check(Class<? extends Record> type, Object... values) {
        List<KeyOf> keys = of(type);
        if (keys.size() != values.length) {
            throw new IllegalStateException(type.getSimpleName() + " checks too few components");
        }
        for (int i = 0; i < values.length; i++) {
            KeyOf key = keys.get(i);
            Objects.requireNonNull(values[i], key.name());
            checkOne(type, key, values[i]);
        }
    }

    /**
     * Checks that values of a list rise.
     *
     * @param list name of the list
     * @param dimension of the values [SI]
     * @throws IllegalArgumentException naming record, place in the list, value and what is allowed
     */
    public static void checkRising(
            Class<? extends Record> type, String list, Dimension dimension, double... values) {
        for (int i = 1; i < values.length; i++) {
            if (values[i] <= values[i - 1]) {
                throw new IllegalArgumentException(
                        String.format(
                                Locale.ROOT,
                                "%s: %s[%d] at %s; allowed: above %s[%d], %s",
                                type.getSimpleName(),
                                list,
                                i,
                                Printed.given(dimension, values[i]),
                                list,
                                i - 1,
                                Printed.given(dimension, values[i - 1])));
            }
        }
    }

    /** An enum constant as it stands in a file. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A constant as a person reads it in a sentence: its name in small letters. */
    public static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static void checkOne(Class<?> type, KeyOf key, Object value) {
        if (value instanceof Number number) {
            require(type, key, key.range(), number.doubleValue());
        } else if (value instanceof OptionalDouble optional) {
            optional.ifPresent(number -> require(type, key, key.range(), number));
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> checkOne(type, key, inner));
        } else if (value instanceof Collection<?> list) {
            require(type, key, key.range(), list.size());
            list.forEach(entry -> checkEntry(type, key, entry));
        } else if (value instanceof String text && text.isBlank()) {
            throw new IllegalArgumentException(
                    type.getSimpleName() + ": " + key.name() + " must not be blank");
        }
    }

    private static void checkEntry(Class<?> type, KeyOf key, Object entry) {
        Objects.requireNonNull(entry, key.name());
        if (entry instanceof Number number) {
            require(type, key, key.each(), number.doubleValue());
        }
    }

    private static void require(Class<?> type, KeyOf key, Range range, double value) {
        if (!range.holds(value)) {
            String si = key.dimension() == Dimension.RATIO ? "" : " [SI]";
            throw new IllegalArgumentException(
                    type.getSimpleName()
                            + ": "
                            + key.name()
                            + " is "
                            + value
                            + si
                            + ", allowed: "
                            + range.words());
        }
    }
}
