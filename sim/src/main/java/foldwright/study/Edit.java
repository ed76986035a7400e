// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Copies of records with one value changed, named by its key path, e.g. {@code
 * "drive.screw.nut.friction"} or {@code "springs[0].law.rate"}. Values are SI; an optional value is
 * given without its optional. The record's own checks run on the copy.
 */
public final class Edit {
    private Edit() {}

    /**
     * A copy of a record with the value at the path replaced.
     *
     * @throws IllegalArgumentException if there is no such key, or the record refuses the value
     */
    public static <R extends Record> R with(R record, String path, Object value) {
        int dot = path.indexOf('.');
        String step = dot < 0 ? path : path.substring(0, dot);
        String rest = dot < 0 ? "" : path.substring(dot + 1);
        int bracket = step.indexOf('[');
        String name = bracket < 0 ? step : step.substring(0, bracket);
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        boolean found = false;
        for (int i = 0; i < components.length; i++) {
            values[i] = read(components[i], record);
            if (components[i].getName().equals(name)) {
                found = true;
                int index = bracket < 0 ? -1 : index(step);
                values[i] = changed(values[i], index, rest, value);
            }
        }
        if (!found) {
            throw new IllegalArgumentException(
                    record.getClass().getSimpleName()
                            + " has no \""
                            + name
                            + "\"; it has "
                            + Arrays.stream(components).map(RecordComponent::getName).toList());
        }
        return rebuilt(record, components, values);
    }

    private static int index(String step) {
        return Integer.parseInt(step.substring(step.indexOf('[') + 1, step.indexOf(']')));
    }

    private static Object changed(Object old, int index, String rest, Object value) {
        if (index >= 0) {
            List<Object> list = new ArrayList<>((List<?>) old);
            list.set(index, changed(list.get(index), -1, rest, value));
            return list;
        }
        if (old instanceof OptionalDouble) {
            return OptionalDouble.of((Double) value);
        }
        if (old instanceof Optional<?> optional) {
            return Optional.of(rest.isEmpty() ? value : with(inner(optional), rest, value));
        }
        return rest.isEmpty() ? value : with((Record) old, rest, value);
    }

    private static Record inner(Optional<?> optional) {
        return (Record)
                optional.orElseThrow(
                        () -> new IllegalArgumentException("a part that is absent has no values"));
    }

    private static Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(component.getName(), e);
        }
    }

    @SuppressWarnings("unchecked")
    private static <R extends Record> R rebuilt(
            R record, RecordComponent[] components, Object[] values) {
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            return (R) constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(record.getClass().getName(), e);
        }
    }
}
