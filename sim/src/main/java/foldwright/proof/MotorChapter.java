// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.motor.ElectricalPullOut;
import foldwright.elements.motor.HybridStepper;
import foldwright.elements.motor.LoadAngle;
import foldwright.elements.motor.StepperDrive;
import java.util.ArrayList;
import java.util.List;

/** Hybrid steppers: load angle, resonance and torque over speed. */
public final class MotorChapter implements ProofChapter {
    private static final double GRAM_SQUARE_CENTIMETRE = 1e-7;
    private static final double PER_MINUTE = Math.PI / 30;
    private static final double AT_REST = 5e-3;
    private static final double AT_SPEED = 1e-2;

    @Override
    public String title() {
        return "Stepper motors";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(frame17());
        values.addAll(frame11());
        return values;
    }

    private static Comparison source(String name) {
        return new Comparison(
                name,
                AT_REST,
                "recomputed independently; load-angle law as in P. Acarnley, Stepping Motors, 4th"
                        + " ed. ch. 3 (from memory), pull-out from the two-phase phasor equation");
    }

    private static List<ProofValue> frame17() {
        HybridStepper motor =
                new HybridStepper(0.4, 1.5, 1.65, 3.2e-3, 50, 58 * GRAM_SQUARE_CENTIMETRE, 0.015);
        Comparison all = source("stepper 0.4 N·m, 1.5 A at 24 V");
        atRest(
                all,
                motor,
                20,
                0.08,
                new double[] {0.188562, 2.12132, 11.537, 0.230739, 20, 254.852});
        all.value("electrical time constant", motor.electricalTimeConstant() * 1e3, 1.93939, "ms");
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, 24));
        all.value("corner speed", curve.cornerSpeed() / PER_MINUTE, 543.641, "1/min");
        speedPoint(all, curve, 100, 1.81336, 0.4);
        speedPoint(all, curve, 300, 0.789558, 0.4);
        speedPoint(all, curve, 600, 0.408698, 0.390002);
        speedPoint(all, curve, 1000, 0.247121, 0.247121);
        speedPoint(all, curve, 1500, 0.16515, 0.16515);
        double detent = motor.loadAngle().torqueAtRest(Math.toRadians(30));
        return all.value("torque 30 degrees behind, with detent", detent, 0.21299, "N·m").values();
    }

    private static List<ProofValue> frame11() {
        HybridStepper motor =
                new HybridStepper(0.12, 0.67, 9.2, 7.2e-3, 50, 18 * GRAM_SQUARE_CENTIMETRE, 0.005);
        Comparison all = source("stepper 0.12 N·m, 0.67 A at 12 V");
        atRest(
                all,
                motor,
                5,
                0.03,
                new double[] {0.126646, 0.947523, 14.4775, 0.28955, 6, 257.058});
        all.value("electrical time constant", motor.electricalTimeConstant() * 1e3, 0.782609, "ms");
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, 12));
        all.value("corner speed", curve.cornerSpeed() / PER_MINUTE, 150.988, "1/min");
        speedPoint(all, curve, 100, 0.137223, 0.12);
        speedPoint(all, curve, 300, 0.0824317, 0.0824317);
        speedPoint(all, curve, 600, 0.0466879, 0.0466879);
        double detent = motor.loadAngle().torqueAtRest(Math.toRadians(30));
        return all.value("torque 30 degrees behind, with detent", detent, 0.0643301, "N·m")
                .values();
    }

    /** {@code published}: k_t, current amplitude, lag and shaft error in degrees, stiffness, Hz. */
    private static void atRest(
            Comparison all,
            HybridStepper motor,
            double loadInertiaGcm2,
            double loadTorque,
            double[] published) {
        LoadAngle angle = motor.loadAngle();
        double inertia = motor.rotorInertia() + loadInertiaGcm2 * GRAM_SQUARE_CENTIMETRE;
        double lag = Math.toDegrees(angle.lag(loadTorque).orElse(Double.NaN));
        double error = Math.toDegrees(angle.shaftError(loadTorque).orElse(Double.NaN));
        all.value("torque constant", motor.torqueConstant(), published[0], "N·m/A")
                .value("current amplitude", motor.ratedAmplitude(), published[1], "A")
                .value("load angle", lag, published[2], "deg")
                .value("shaft error", error, published[3], "deg")
                .value("stiffness at rest", angle.standstillStiffness(), published[4], "N·m/rad")
                .value("resonance", angle.resonance(inertia) / (2 * Math.PI), published[5], "Hz");
    }

    private static void speedPoint(
            Comparison all,
            ElectricalPullOut curve,
            double perMinute,
            double voltageOnly,
            double limited) {
        double speed = perMinute * PER_MINUTE;
        String at = Math.round(perMinute) + " 1/min, ";
        all.within(
                        AT_SPEED,
                        at + "pull-out by voltage",
                        curve.voltageOnlyTorque(speed),
                        voltageOnly,
                        "N·m")
                .within(
                        AT_SPEED,
                        at + "pull-out with current limit",
                        curve.torque(speed),
                        limited,
                        "N·m");
    }
}
