// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import java.util.Objects;

/**
 * Voltage equations of a hybrid stepper in the frame of its rotor, d along the rotor's flux:
 *
 * <pre>
 *   v_d = R i_d + L di_d/dt - N_r omega L i_q
 *   v_q = R i_q + L di_q/dt + N_r omega L i_d + k_t omega
 *   T = k_t i_q
 * </pre>
 *
 * Sinusoidal flux, constant inductance equal in both axes, no iron loss (two-phase machine theory,
 * from memory). Pure, allocation-free; currents in amplitudes [A], speed of the shaft [rad/s].
 *
 * @param motor whose winding it is
 */
public record DqModel(HybridStepper motor) {
    public DqModel {
        Objects.requireNonNull(motor, "motor");
    }

    /** di_d/dt [A/s]. */
    public double directRate(double vd, double id, double iq, double speed) {
        double drop = motor.resistance() * id - motor.reactance(speed) * iq;
        return (vd - drop) / motor.inductance();
    }

    /** di_q/dt [A/s]. */
    public double quadratureRate(double vq, double id, double iq, double speed) {
        double drop = motor.resistance() * iq + motor.reactance(speed) * id;
        return (vq - drop - motor.torqueConstant() * speed) / motor.inductance();
    }

    /** i_d in the steady state of constant voltages and speed [A]. */
    public double steadyDirect(double vd, double vq, double speed) {
        double r = motor.resistance();
        double x = motor.reactance(speed);
        return (r * vd + x * (vq - motor.torqueConstant() * speed)) / (r * r + x * x);
    }

    /** i_q in the steady state of constant voltages and speed [A]. */
    public double steadyQuadrature(double vd, double vq, double speed) {
        double r = motor.resistance();
        double x = motor.reactance(speed);
        return (r * (vq - motor.torqueConstant() * speed) - x * vd) / (r * r + x * x);
    }

    /** Torque of the current, k_t i_q [N·m]. */
    public double torque(double iq) {
        return motor.torqueConstant() * iq;
    }

    /** Power into the winding, v_d i_d + v_q i_q for amplitudes of a two-phase machine [W]. */
    public static double power(double vd, double vq, double id, double iq) {
        return vd * id + vq * iq;
    }
}
