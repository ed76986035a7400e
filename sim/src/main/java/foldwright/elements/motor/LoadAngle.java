// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import foldwright.elements.Domain;
import java.util.OptionalDouble;

/**
 * Torque of a stepper over the electrical angle by which its rotor lags the current.
 *
 * <p>With the current vector at electrical angle gamma and the rotor at theta_e = N_r theta,
 *
 * <pre>
 *   T = T_h sin(gamma - theta_e) - T_d sin(4 theta_e)
 * </pre>
 *
 * (P. Acarnley, <i>Stepping Motors</i>, 4th ed. ch. 3, from memory). With phi = gamma - theta_e and
 * gamma at a position of one phase on (a multiple of 90 degrees) the detent adds + T_d sin(4 phi);
 * halfway between, where two equal phases hold, it adds - T_d sin(4 phi). {@link #torqueAtRest}
 * takes the first form. Pure, allocation-free.
 *
 * @param holdingTorque T_h of the current that flows; 0 when switched off [N·m]
 * @param detentTorque T_d [N·m]
 * @param rotorTeeth N_r
 */
public record LoadAngle(double holdingTorque, double detentTorque, int rotorTeeth) {
    public LoadAngle {
        Domain.notNegative("holding torque", holdingTorque, "N·m");
        Domain.notNegative("detent torque", detentTorque, "N·m");
        Domain.atLeast("rotor teeth", rotorTeeth, 1);
    }

    /**
     * Torque on the rotor [N·m].
     *
     * @param command gamma, electrical angle of the current [rad]
     * @param rotor theta, shaft angle [rad]
     */
    public double torque(double command, double rotor) {
        double electrical = rotorTeeth * rotor;
        return holdingTorque * Math.sin(command - electrical)
                - detentTorque * Math.sin(4 * electrical);
    }

    /** -dT/d(rotor) at the same arguments, the magnetic spring [N·m/rad]. */
    public double stiffness(double command, double rotor) {
        double electrical = rotorTeeth * rotor;
        return rotorTeeth
                * (holdingTorque * Math.cos(command - electrical)
                        + 4 * detentTorque * Math.cos(4 * electrical));
    }

    /**
     * Torque on a rotor that turns with the field at some speed, where the current no longer
     * reaches its standstill value: the pull-out torque takes the place of T_h, the detent averages
     * out over its period of one step [N·m].
     *
     * @param lag phi [rad]
     * @param pullOut torque at that speed [N·m]
     */
    public static double runningTorque(double lag, double pullOut) {
        return pullOut * Math.sin(lag);
    }

    /**
     * Torque at a lag phi behind a position of one phase on, T_h sin(phi) + T_d sin(4 phi) [N·m].
     */
    public double torqueAtRest(double lag) {
        return holdingTorque * Math.sin(lag) + detentTorque * Math.sin(4 * lag);
    }

    /**
     * Lag under a steady load, asin(T_L/T_h), detent left out as it cancels over a step [rad
     * electrical]; empty if the load exceeds the holding torque and steps are lost.
     */
    public OptionalDouble lag(double load) {
        return Math.abs(load) <= holdingTorque && holdingTorque > 0
                ? OptionalDouble.of(Math.asin(load / holdingTorque))
                : OptionalDouble.empty();
    }

    /** Shaft error that goes with {@link #lag(double)}, lag/N_r [rad]; empty if steps are lost. */
    public OptionalDouble shaftError(double load) {
        OptionalDouble lag = lag(load);
        return lag.isPresent()
                ? OptionalDouble.of(lag.getAsDouble() / rotorTeeth)
                : OptionalDouble.empty();
    }

    /** Stiffness at rest without load, N_r T_h, detent left out [N·m/rad]. */
    public double standstillStiffness() {
        return rotorTeeth * holdingTorque;
    }

    /**
     * Natural frequency at rest, (N_r T_h/J)^(1/2) [rad/s].
     *
     * @param inertia rotor and all that is rigidly coupled to it [kg·m²]
     */
    public double resonance(double inertia) {
        return Math.sqrt(standstillStiffness() / inertia);
    }

    /**
     * Full electrical turns by which a rotor has slipped against its command: 0 while the lag stays
     * within half a turn; each turn is four full steps lost.
     *
     * @param lag unwrapped gamma - theta_e [rad]
     */
    public static long slippedTurns(double lag) {
        return Math.round(lag / (2 * Math.PI));
    }

    /** Full steps lost at that unwrapped lag, four a slipped turn. */
    public static long lostSteps(double lag) {
        return 4 * slippedTurns(lag);
    }
}
