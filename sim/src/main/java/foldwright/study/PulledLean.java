// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.Measured;
import foldwright.machine.gantry.Gantry;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the deck leans on the lift while bridge and carriage start, by Newton's second law and
 * the spring that a pull test found.
 *
 * @param mass of bridge and carriage [kg]
 * @param acceleration asked for [m/s²]
 * @param stiffness measured [N/m]
 */
public record PulledLean(double mass, double acceleration, double stiffness) {

    /** Of a machine with a gantry on its deck and a pull test. */
    public static Optional<PulledLean> of(Machine machine) {
        OptionalDouble pulled =
                machine.measured().map(Measured::lateralStiffness).orElse(OptionalDouble.empty());
        Optional<Gantry> gantry = machine.gantryOnDeck();
        return pulled.isEmpty() || gantry.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new PulledLean(
                                gantry.get().movingMass(),
                                gantry.get().moves().acceleration(),
                                pulled.getAsDouble()));
    }

    /** Way to the side at the top [m]. */
    public double way() {
        return mass * acceleration / stiffness;
    }
}
