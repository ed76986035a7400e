// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.quantity.Dimension;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The value at a key path of a description, as text. */
final class KeyValue {
    private KeyValue() {}

    /** E.g. "0.15" or "22 N/mm"; "see the file" for a value that is more than a number. */
    static String text(Record record, String path) {
        int dot = path.indexOf('.');
        String step = dot < 0 ? path : path.substring(0, dot);
        String rest = dot < 0 ? "" : path.substring(dot + 1);
        int bracket = step.indexOf('[');
        String name = bracket < 0 ? step : step.substring(0, bracket);
        for (KeyOf key : Keys.of(record.getClass())) {
            if (key.name().equals(name)) {
                Object value = unwrap(read(key, record));
                if (bracket >= 0 && value instanceof List<?> list) {
                    int index = Integer.parseInt(step.substring(bracket + 1, step.indexOf(']')));
                    value = index < list.size() ? list.get(index) : null;
                }
                if (!rest.isEmpty()) {
                    return value instanceof Record inner ? text(inner, rest) : "not given";
                }
                return shown(value, key.dimension());
            }
        }
        return "not given";
    }

    private static Object read(KeyOf key, Record record) {
        try {
            return key.component().getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(key.name(), e);
        }
    }

    private static Object unwrap(Object value) {
        if (value instanceof Optional<?> o) {
            return o.orElse(null);
        }
        if (value instanceof OptionalDouble o) {
            return o.isPresent() ? (Object) o.getAsDouble() : null;
        }
        return value;
    }

    private static String shown(Object value, Dimension dimension) {
        if (value == null) {
            return "not given";
        }
        if (value instanceof Double number) {
            return Numerals.with(number, unit(dimension));
        }
        return value instanceof Number || value instanceof String
                ? value.toString()
                : "see the file";
    }

    private static Shown unit(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> Shown.MILLIMETRE;
            case MASS -> Shown.KILOGRAM;
            case FORCE -> Shown.NEWTON;
            case TORQUE -> Shown.NEWTON_METRE;
            case ANGLE -> Shown.DEGREE;
            case STIFFNESS -> Shown.NEWTON_PER_MILLIMETRE;
            case STRESS -> Shown.MEGAPASCAL;
            case SPEED -> Shown.MILLIMETRE_PER_SECOND;
            case ACCELERATION -> Shown.METRE_PER_SECOND_SQUARED;
            case ROTATION_SPEED -> Shown.REVOLUTION_PER_SECOND;
            case TIME -> Shown.SECOND;
            default -> Shown.NUMBER;
        };
    }
}
