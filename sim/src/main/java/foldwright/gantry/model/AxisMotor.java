// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Carrier;
import java.util.Objects;

/**
 * A stepper that drives an axle. Its rotor hangs in the field like on a spring: torque = curve
 * (speed) sin(teeth (command - angle)), so that a rotor that falls more than half a period behind
 * is caught one period, four full steps, later.
 *
 * @param axle that it drives
 * @param body that carries it
 * @param curve largest torque over speed; at standstill the holding torque
 * @param rotorTeeth pole pairs, 50 for 200 full steps a turn
 * @param rotorInertia [kg m2]
 * @param microsteps in a full step; 0 for a command without steps
 * @param drag bearing and detent friction torque [N m]
 * @param damping torque a speed difference between field and rotor [N m s/rad]
 */
public record AxisMotor(
        String axle,
        Carrier body,
        TorqueCurve curve,
        int rotorTeeth,
        double rotorInertia,
        int microsteps,
        double drag,
        double damping) {
    public AxisMotor {
        Objects.requireNonNull(axle, "axle");
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(curve, "curve");
        Checks.positive("rotor teeth", rotorTeeth);
        Checks.positive("rotor inertia", rotorInertia);
        Checks.notNegative("microsteps", microsteps);
        Checks.notNegative("motor drag", drag);
        Checks.notNegative("motor damping", damping);
    }

    /** A motor on the base with one torque at all speeds, no drag, damping or microsteps. */
    public static AxisMotor plain(String axle, double torque, double rotorInertia) {
        return new AxisMotor(
                axle, Carrier.BASE, TorqueCurve.constant(torque), 50, rotorInertia, 0, 0, 0);
    }

    /** Angle between two commands the drive can give; 0 where commands have no steps [rad]. */
    public double microstep() {
        return microsteps == 0 ? 0 : 2 * Math.PI / (4.0 * rotorTeeth * microsteps);
    }

    /** Torsional stiffness of the field about a held rotor [N m/rad]. */
    public double fieldStiffness() {
        return rotorTeeth * curve.at(0);
    }

    AxisMotor frictionless() {
        return new AxisMotor(axle, body, curve, rotorTeeth, rotorInertia, microsteps, 0, damping);
    }
}
