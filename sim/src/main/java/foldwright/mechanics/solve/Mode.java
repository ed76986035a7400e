// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import java.util.List;

/**
 * A mode of small motion.
 *
 * @param omega2 square of the angular frequency [1/s2]; negative: the motion grows
 * @param shape displacement of the centre [base frame] and turn [body axes] of each body from body
 *     1 on, six numbers each, of unit modal mass
 */
public record Mode(double omega2, List<Double> shape) {
    public Mode {
        shape = List.copyOf(shape);
    }

    /** Natural frequency [Hz]; not a number for a motion that grows. */
    public double frequency() {
        return Math.sqrt(omega2) / (2 * Math.PI);
    }

    /** Whether the equilibrium holds against this motion. */
    public boolean stable() {
        return omega2 > 0;
    }
}
