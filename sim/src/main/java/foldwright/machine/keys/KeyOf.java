// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import foldwright.quantity.Dimension;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;

/** A key as described on its record component. */
public final class KeyOf {
    private final RecordComponent component;
    private final Key key;
    private final Range range;
    private final Range each;
    private final Class<?> type;
    private final boolean list;
    private final Dimension dimension;
    private final String orElse;
    private final boolean mayBeAbsent;

    KeyOf(RecordComponent component) {
        this.component = component;
        this.key = component.getAnnotation(Key.class);
        if (key == null) {
            throw new IllegalStateException(
                    component.getDeclaringRecord().getSimpleName()
                            + ": "
                            + component.getName()
                            + " is not described");
        }
        this.list = Collection.class.isAssignableFrom(component.getType());
        this.type = innerType(component.getGenericType());
        this.dimension = key.is();
        this.orElse = key.orElse();
        this.range = Range.of(key.range(), list ? Dimension.RATIO : key.is());
        this.each = Range.of(key.each(), key.is());
        this.mayBeAbsent = optional() || list && listMayBeEmpty() || !orElse.isEmpty();
    }

    private static Class<?> innerType(Type declared) {
        Type type = declared;
        while (type instanceof ParameterizedType inner) {
            type = inner.getActualTypeArguments()[0];
        }
        return type == OptionalDouble.class ? double.class : (Class<?>) type;
    }

    private boolean optional() {
        Class<?> declared = component.getType();
        return declared == Optional.class || declared == OptionalDouble.class;
    }

    private boolean listMayBeEmpty() {
        return range.holds(0) && range != Range.ALL;
    }

    /** The key as it stands in the file. */
    public String name() {
        return component.getName();
    }

    /** What the value means. */
    public String about() {
        return key.value();
    }

    /** Dimension of the number or numbers. */
    public Dimension dimension() {
        return dimension;
    }

    /** Allowed values, or for a list the allowed number of entries. */
    public Range range() {
        return range;
    }

    /** Allowed values of the numbers inside a list or point. */
    public Range each() {
        return each;
    }

    /** Value used when the key is left out, empty for none. */
    public String orElse() {
        return orElse;
    }

    /** An example as it stands in a file, empty for none. */
    public String example() {
        return key.example();
    }

    /** Table a text must be a name of. */
    public NameTable names() {
        return key.names();
    }

    /** Whether the value is a list. */
    public boolean isList() {
        return list;
    }

    /** Whether the key may be left out. */
    public boolean mayBeAbsent() {
        return mayBeAbsent;
    }

    /** The type of the value, or of the entries of a list, without its optional. */
    public Class<?> type() {
        return type;
    }

    /** The component this key describes. */
    public RecordComponent component() {
        return component;
    }
}
