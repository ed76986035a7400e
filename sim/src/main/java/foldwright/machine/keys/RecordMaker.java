// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.stream.Stream;

/** Makes records of a class known only at run time. */
public final class RecordMaker {
    private static final ClassValue<Constructor<?>> CACHE =
            new ClassValue<>() {
                @Override
                protected Constructor<?> computeValue(Class<?> type) {
                    Class<?>[] types =
                            Stream.of(type.getRecordComponents())
                                    .map(RecordComponent::getType)
                                    .toArray(Class<?>[]::new);
                    try {
                        return type.getDeclaredConstructor(types);
                    } catch (NoSuchMethodException e) {
                        throw new IllegalStateException("every record has one", e);
                    }
                }
            };

    private RecordMaker() {}

    /**
     * A record with the given component values, in order.
     *
     * @throws IllegalArgumentException if the record refuses them
     */
    public static Object make(Class<?> type, Object[] values) {
        try {
            return CACHE.get(type).newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw new IllegalStateException(type.getSimpleName(), e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getSimpleName(), e);
        }
    }
}
