// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a record is, for the documentation; and, for a record of a sealed interface, the word that
 * chooses it in the file.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Kind {
    /** What it is, one or two sentences. */
    String value();

    /** On a sealed interface: the key whose value chooses the kind. */
    String key() default "kind";

    /** On a record of a sealed interface: the word that chooses it. */
    String word() default "";

    /** On a sealed interface: the word that is meant where the choosing key is left out. */
    String orElse() default "";

    /** A key that is allowed and left alone, such as the one that names a schema to editors. */
    String ignored() default "";
}
