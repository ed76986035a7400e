// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

import foldwright.gantry.route.Carrier;

/** A motor's turning field at work on its rotor. */
final class FieldMotor {
    final Rotor rotor;
    final Carrier body;
    final double poles;
    final TorqueCurve curve;
    private final double damping;
    private final double microstep;
    private final double perMicrostep;

    double command;
    double commandRate;

    /** Largest torque at the commanded speed [N m]. */
    private double strength;

    /** Torque of the field on the rotor at the last evaluation [N m]. */
    double torque;

    /** Largest torque by size since the kernel stood [N m]. */
    double peak;

    FieldMotor next;

    FieldMotor(AxisMotor motor, Rotor rotor) {
        this.rotor = rotor;
        body = motor.body();
        poles = motor.rotorTeeth();
        curve = motor.curve();
        damping = motor.damping();
        microstep = motor.microstep();
        perMicrostep = microstep > 0 ? 1 / microstep : 0;
    }

    /** Takes a way from the middle of the travel and a speed as command [m, m/s]. */
    void tell(double dx, double dy, double vx, double vy) {
        double told = fma(rotor.perX, dx, rotor.perY * dy);
        command = microstep > 0 ? microstep * Math.rint(told * perMicrostep) : told;
        commandRate = fma(rotor.perX, vx, rotor.perY * vy);
        strength = curve.at(commandRate);
    }

    /** Takes back a command and a torque that were saved. */
    void restore(double savedCommand, double savedRate, double savedTorque) {
        command = savedCommand;
        commandRate = savedRate;
        strength = curve.at(savedRate);
        torque = savedTorque;
    }

    /** Electrical angle of the field before the rotor, the motor's body turned by a yaw [rad]. */
    double lag(double carried) {
        return poles * (command - (rotor.angle - carried));
    }

    /** Drives the rotor for an electrical lag against its friction; gives the field's torque. */
    double pull(double lag, double friction) {
        double t = fma(strength, FieldSine.of(lag), damping * (commandRate - rotor.predicted));
        torque = t;
        double size = Math.abs(t);
        if (size > peak) {
            peak = size;
        }
        rotor.driven = t - friction;
        return t;
    }

    /** Torque a radian of the rotor at a lag, never less than a share of the steepest [N m/rad]. */
    double slope(double lag, double leastCosine) {
        return strength * poles * Math.max(leastCosine, Math.cos(lag));
    }
}
