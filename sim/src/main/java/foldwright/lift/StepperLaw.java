// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.motor.LoadAngle;
import foldwright.mechanics.force.ForceLaw;

/**
 * Torque of a stepping motor on its rotor while the field turns as commanded: pull-out torque at
 * the commanded speed times the sine of the electrical lag, and a damping towards the speed of the
 * field.
 *
 * <p>The lag may grow past half a pole: then the rotor falls behind by whole poles of four full
 * steps, which is how steps are lost. The damping is 0.1 of critical about standstill (assumed: a
 * motor's own damping depends on its driver); it takes no part in steady running, where rotor and
 * field turn alike.
 */
final class StepperLaw implements ForceLaw {
    private static final double DAMPING_RATIO = 0.1;

    /** Most change of the electrical lag in one step [rad]: trapezoids of a sine to 0.5 %. */
    private static final double FINE = 0.25;

    private final DriveTrain train;
    private final RotorCommand command;
    private final double poles;
    private final double damping;
    private double field;
    private double fieldSpeed;
    private double pullOut;

    StepperLaw(DriveTrain train, RotorCommand command, int rotorTeeth) {
        this.train = train;
        this.command = command;
        poles = rotorTeeth;
        damping = 2 * DAMPING_RATIO * Math.sqrt(poles * train.available(0) * train.rotorInertia());
    }

    @Override
    public void evaluate(double value, double rate, double time, Response out) {
        at(time);
        double lag = poles * (field - value);
        out.clear();
        out.force = LoadAngle.runningTorque(lag, pullOut) + damping * (fieldSpeed - rate);
        out.stiffness = pullOut * poles * Math.cos(lag);
        out.damping = damping;
    }

    /** Sets the field to its state at a time. */
    private void at(double time) {
        field = command.value(time);
        fieldSpeed = command.rate(time);
        pullOut = train.available(Math.abs(fieldSpeed));
    }

    /** Shaft angle of the field at the last evaluation [rad]. */
    double field() {
        return field;
    }

    /** Its speed [rad/s]. */
    double fieldSpeed() {
        return fieldSpeed;
    }

    /** Torque at which the rotor falls out at that speed [N·m]. */
    double pullOut() {
        return pullOut;
    }

    /** Electrical lag behind the field at a rotor angle [rad]. */
    double lag(double angle) {
        return poles * (field - angle);
    }

    /** Poles the rotor has fallen behind for good, at a rotor angle [1]. */
    long slipped(double angle) {
        return LoadAngle.slippedTurns(lag(angle));
    }

    /** A rotor that slips is followed along the sine of its torque, not carried past it. */
    @Override
    public boolean coarse(double from, double to, double start, double end) {
        double slip = command.value(end) - command.value(start) - (to - from);
        return Math.abs(poles * slip) > FINE;
    }

    /** A quarter of a pole: a rotor may not jump one within Newton. */
    @Override
    public double largestUpdate() {
        return 0.5 * Math.PI / poles;
    }
}
