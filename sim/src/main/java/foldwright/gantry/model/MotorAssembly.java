// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.elements.motor.ElectricalPullOut;
import foldwright.elements.motor.HybridStepper;
import foldwright.elements.motor.MeasuredPullOut;
import foldwright.elements.motor.PullOut;
import foldwright.elements.motor.StepperDrive;
import foldwright.machine.gantry.GantryMotor;
import foldwright.machine.part.PullOutPoints;
import foldwright.machine.part.Stepper;
import foldwright.machine.part.Winding;

/**
 * Motors of a machine file as fields with a torque over speed.
 *
 * <p>At standstill the field holds with the holding torque, turning with the pull-out torque; the
 * difference fades out over the first revolution a second. Damping: ratio 0.05 of the rotor in its
 * field (common practice, no source). The detent torque averages out over a step and is left out.
 */
final class MotorAssembly {
    private static final double FADE = 2 * Math.PI;
    private static final double DAMPING_RATIO = 0.05;

    private MotorAssembly() {}

    static AxisMotor motor(GantryMotor motor) {
        Stepper s = motor.stepper();
        PullOut law = pullOut(s);
        double extra = Math.max(0, s.holdingTorque() - law.torque(0));
        TorqueCurve curve =
                TorqueCurve.of(
                        speed -> law.torque(speed) + extra * Math.max(0, 1 - speed / FADE),
                        Math.max(FADE, Math.min(law.fastest(), 1000)));
        int teeth = Math.max(1, s.stepsPerTurn() / 4);
        double shaft = motor.crossShaft().map(c -> c.inertia() / 2).orElse(0.0);
        double field = Math.sqrt(teeth * s.holdingTorque() * s.rotorInertia());
        return new AxisMotor(
                motor.name(),
                GantryAssembly.carrier(motor.on()),
                curve,
                teeth,
                s.rotorInertia() + shaft,
                motor.microsteps(),
                0,
                2 * DAMPING_RATIO * field);
    }

    private static PullOut pullOut(Stepper s) {
        if (s.pullOut() instanceof PullOutPoints points) {
            return new MeasuredPullOut(
                    points.points().stream()
                            .map(p -> new MeasuredPullOut.Point(p.speed(), p.torque()))
                            .toList());
        }
        Winding w = (Winding) s.pullOut();
        HybridStepper stepper =
                new HybridStepper(
                        s.holdingTorque(),
                        w.current(),
                        w.resistance(),
                        w.inductance(),
                        Math.max(1, s.stepsPerTurn() / 4),
                        s.rotorInertia(),
                        s.detentTorque());
        return new ElectricalPullOut(stepper, StepperDrive.rated(stepper, w.supplyVoltage()));
    }
}
