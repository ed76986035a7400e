// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/**
 * A gas spring.
 *
 * @param force force when extended [N]
 * @param compressedForce force when compressed by its stroke [N]
 * @param extendedLength length when extended, eye to eye [m]
 * @param stroke stroke [m]
 * @param friction friction of rod and piston [N]
 * @param damping damping [N·s/m]
 */
@Kind(value = "A gas spring.", word = "gas")
public record GasSpring(
        @Key(
                        value = "Force when extended",
                        is = Dimension.FORCE,
                        range = "(0 N, 100000 N]",
                        example = "60 N")
                double force,
        @Key(
                        value = "Force when compressed by its stroke",
                        is = Dimension.FORCE,
                        range = "(0 N, 100000 N]",
                        example = "80 N")
                double compressedForce,
        @Key(
                        value = "Length when extended, eye to eye",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 5 m]",
                        example = "205 mm")
                double extendedLength,
        @Key(value = "Stroke", is = Dimension.LENGTH, range = "(0 mm, 2 m]", example = "60 mm")
                double stroke,
        @Key(
                        value = "Friction of rod and piston",
                        is = Dimension.FORCE,
                        range = "[0 N, 10000 N]",
                        orElse = "0 N",
                        example = "5 N")
                double friction,
        @Key(
                        value = "Damping",
                        is = Dimension.DAMPING,
                        range = "[0 N*s/m, 1000000 N*s/m]",
                        orElse = "0 N*s/m",
                        example = "150 N*s/m")
                double damping)
        implements SpringLaw {
    /** Checks every value against its key. */
    public GasSpring {
        Keys.check(
                GasSpring.class, force, compressedForce, extendedLength, stroke, friction, damping);
        if (compressedForce < force) {
            throw new IllegalArgumentException(
                    "GasSpring: it pushes with "
                            + Printed.given(Dimension.FORCE, compressedForce)
                            + " when compressed; allowed: at least its force when extended, "
                            + Printed.given(Dimension.FORCE, force));
        }
        if (stroke >= extendedLength) {
            throw new IllegalArgumentException(
                    "GasSpring: its stroke is "
                            + Printed.given(Dimension.LENGTH, stroke)
                            + "; allowed: less than its length, "
                            + Printed.given(Dimension.LENGTH, extendedLength));
        }
    }
}
