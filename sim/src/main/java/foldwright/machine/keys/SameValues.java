// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Compares descriptions value by value, as their own {@code equals} does. The JVM writes that of a
 * record when it is first called, a few milliseconds a class; for the hundred classes of a machine
 * this costs more than all comparisons while a program starts.
 */
public final class SameValues {
    private static final ClassValue<Method[]> ACCESSORS =
            new ClassValue<>() {
                @Override
                protected Method[] computeValue(Class<?> type) {
                    return Stream.of(type.getRecordComponents())
                            .map(RecordComponent::getAccessor)
                            .toArray(Method[]::new);
                }
            };

    private SameValues() {}

    /** Whether both describe the same: records, lists and optionals by what they hold. */
    public static boolean in(Object a, Object b) {
        if (a == b) {
            return true;
        }
        if (a == null || b == null) {
            return false;
        }
        if (a instanceof Record && a.getClass() == b.getClass()) {
            for (Method accessor : ACCESSORS.get(a.getClass())) {
                if (!in(value(accessor, a), value(accessor, b))) {
                    return false;
                }
            }
            return true;
        }
        if (a instanceof List<?> one && b instanceof List<?> other) {
            boolean same = one.size() == other.size();
            for (int i = 0; same && i < one.size(); i++) {
                same = in(one.get(i), other.get(i));
            }
            return same;
        }
        if (a instanceof Optional<?> one && b instanceof Optional<?> other) {
            return in(one.orElse(null), other.orElse(null));
        }
        return a.equals(b);
    }

    private static Object value(Method accessor, Object record) {
        try {
            return accessor.invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }
}
