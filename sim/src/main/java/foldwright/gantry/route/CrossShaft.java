// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.Objects;

/**
 * A shaft that joins two axles.
 *
 * @param first axle at one end
 * @param second axle at the other end; both turn the same way
 * @param stiffness in torsion [N m/rad]; infinite where the shaft counts as rigid
 */
public record CrossShaft(String first, String second, double stiffness) {
    public CrossShaft {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        if (!(stiffness > 0)) {
            throw new IllegalArgumentException(
                    "shaft "
                            + first
                            + " to "
                            + second
                            + ": stiffness is "
                            + stiffness
                            + "; allowed: above 0");
        }
    }
}
