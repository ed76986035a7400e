// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import foldwright.quantity.Dimension;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * One key of the machine file, written on the record component of the same name.
 *
 * <p>This is the only place where a key is described: the reader, the range checks of the records,
 * the JSON Schema and the table of keys in the documentation all come from it.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {
    /** What the value means, one sentence without a full stop. */
    String value();

    /** Dimension of a number; pure numbers by default. */
    Dimension is() default Dimension.RATIO;

    /**
     * Allowed values as an interval, {@code "(0 mm, 5 m]"}: a round bracket leaves its end out. For
     * a list, the allowed number of entries; each number of a list of numbers is checked on its own
     * by {@link #each}.
     */
    String range() default "";

    /** Allowed values of the numbers inside a list or point. */
    String each() default "";

    /** Value used when the key is left out; empty: the key is required, or its type is optional. */
    String orElse() default "";

    /** Table a text must be a name of. */
    NameTable names() default NameTable.NONE;

    /** An example as it stands in a file. */
    String example() default "";
}
