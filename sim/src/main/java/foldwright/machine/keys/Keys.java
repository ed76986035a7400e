// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import foldwright.quantity.Dimension;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
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
