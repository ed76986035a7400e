// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import foldwright.elements.Domain;

/**
 * Two-phase hybrid stepper motor by its data sheet.
 *
 * <p>Model: sinusoidal flux linkage, constant inductance, no saturation, no iron loss (P. Acarnley,
 * <i>Stepping Motors</i>, 4th ed. 2002, ch. 3 and 5, equations from memory).
 *
 * @param holdingTorque two phases on at rated current, T_h [N·m]
 * @param ratedCurrent a phase, both phases on, I [A]
 * @param resistance a phase, R [ohm]
 * @param inductance a phase, L [H]
 * @param rotorTeeth N_r, 50 for 200 full steps a turn
 * @param rotorInertia J [kg·m²]
 * @param detentTorque amplitude without current, T_d [N·m]
 */
public record HybridStepper(
        double holdingTorque,
        double ratedCurrent,
        double resistance,
        double inductance,
        int rotorTeeth,
        double rotorInertia,
        double detentTorque) {

    /** Rotor teeth of a motor with 200 full steps a turn. */
    public static final int TEETH_200_STEPS = 50;

    public HybridStepper {
        Domain.positive("holding torque", holdingTorque, "N·m");
        Domain.positive("rated current", ratedCurrent, "A");
        Domain.positive("phase resistance", resistance, "ohm");
        Domain.positive("phase inductance", inductance, "H");
        Domain.atLeast("rotor teeth", rotorTeeth, 1);
        Domain.positive("rotor inertia", rotorInertia, "kg·m2");
        Domain.notNegative("detent torque", detentTorque, "N·m");
    }

    /**
     * k_t = T_h/(sqrt2 I): torque an ampere of one phase, and back-EMF amplitude a rad/s [N·m/A].
     */
    public double torqueConstant() {
        return holdingTorque / (Math.sqrt(2) * ratedCurrent);
    }

    /** Amplitude of sine currents that give the same holding torque, sqrt2 I [A]. */
    public double ratedAmplitude() {
        return Math.sqrt(2) * ratedCurrent;
    }

    /** Full steps a turn, 4 N_r. */
    public int fullSteps() {
        return 4 * rotorTeeth;
    }

    /** Time constant of the winding L/R [s]. */
    public double electricalTimeConstant() {
        return inductance / resistance;
    }

    /** X = N_r omega L, reactance a phase at shaft speed omega [rad/s] [ohm]. */
    public double reactance(double speed) {
        return rotorTeeth * speed * inductance;
    }

    /** Torque over lag at rated current. */
    public LoadAngle loadAngle() {
        return new LoadAngle(holdingTorque, detentTorque, rotorTeeth);
    }

    /** Torque over lag with the current turned down to that share of the rated one [1]. */
    public LoadAngle loadAngle(double currentShare) {
        return new LoadAngle(holdingTorque * currentShare, detentTorque, rotorTeeth);
    }
}
