// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A stepping motor.
 *
 * @param frameSize frame size by NEMA ICS 16
 * @param stepsPerTurn full steps for one turn
 * @param holdingTorque holding torque with both phases on [N·m]
 * @param detentTorque detent torque without current [N·m]
 * @param rotorInertia moment of inertia of the rotor [kg·m²]
 * @param mass mass of the motor, for the order list; its weight is stated with the base or the deck
 *     [kg]
 * @param pullOut pull-out torque over speed
 */
@Kind("A stepping motor.")
public record Stepper(
        @Key(value = "Frame size by NEMA ICS 16", range = "[5, 42]", orElse = "17", example = "17")
                int frameSize,
        @Key(
                        value = "Full steps for one turn",
                        range = "[4, 1000]",
                        orElse = "200",
                        example = "200")
                int stepsPerTurn,
        @Key(
                        value = "Holding torque with both phases on",
                        is = Dimension.TORQUE,
                        range = "(0 N*m, 100 N*m]",
                        example = "0.40 N*m")
                double holdingTorque,
        @Key(
                        value = "Detent torque without current",
                        is = Dimension.TORQUE,
                        range = "[0 N*m, 10 N*m]",
                        orElse = "0 N*m",
                        example = "0.015 N*m")
                double detentTorque,
        @Key(
                        value = "Moment of inertia of the rotor",
                        is = Dimension.INERTIA,
                        range = "(0 g*cm2, 100000 g*cm2]",
                        example = "58 g*cm2")
                double rotorInertia,
        @Key(
                        value =
                                "Mass of the motor, for the order list; its weight is stated with the base or the deck",
                        is = Dimension.MASS,
                        range = "[0 kg, 50 kg]",
                        orElse = "0 kg",
                        example = "0.28 kg")
                double mass,
        @Key("Pull-out torque over speed") PullOut pullOut) {
    /** Checks every value against its key. */
    public Stepper {
        Keys.check(
                Stepper.class,
                frameSize,
                stepsPerTurn,
                holdingTorque,
                detentTorque,
                rotorInertia,
                mass,
                pullOut);
    }
}
