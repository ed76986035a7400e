// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Pull-out curves and load angle; the worked examples are in the proof chapter. */
class StepperTest {
    private static final String SEED = "20261125";

    @Provide
    Arbitrary<HybridStepper> motors() {
        return Arbitraries.of(
                TypicalStepper.catalog().all().stream().map(TypicalStepper::motor).toList());
    }

    /** Independent of the geometry of circles: tries currents all over the allowed disk. */
    @Property(tries = 60, seed = SEED)
    void noAllowedCurrentGivesMoreTorque(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = 6, max = 48) double volts,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 400) double speed) {
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, volts));
        double best = 0;
        double limit = motor.ratedAmplitude();
        int steps = 200;
        for (int r = 0; r <= steps; r++) {
            for (int a = 0; a < 4 * steps; a++) {
                double angle = Math.PI * a / (2 * steps);
                double id = limit * r / steps * Math.cos(angle);
                double iq = limit * r / steps * Math.sin(angle);
                if (voltage(motor, speed, id, iq) <= volts) {
                    best = Math.max(best, motor.torqueConstant() * iq);
                }
            }
        }
        // the grid may miss the best point by one cell: 1/200 of the current, along the circle too
        double cell = 2 * motor.torqueConstant() * limit / steps;
        assertThat(curve.torque(speed)).isBetween(best - 1e-12, best + cell);
    }

    private static double voltage(HybridStepper m, double speed, double id, double iq) {
        double x = m.reactance(speed);
        double vd = m.resistance() * id - x * iq;
        double vq = m.resistance() * iq + x * id + m.torqueConstant() * speed;
        return Math.hypot(vd, vq);
    }

    @Property(tries = 500, seed = SEED)
    void torqueNeverRisesWithSpeedNorPassesHolding(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = 6, max = 48) double volts,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 600) double a,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 600) double b) {
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, volts));
        double slow = curve.torque(Math.min(a, b));
        double fast = curve.torque(-Math.max(a, b));
        assertThat(fast).isBetween(0.0, slow + 1e-12);
        assertThat(slow).isLessThanOrEqualTo(motor.holdingTorque() * (1 + 1e-12));
    }

    @Property(tries = 200, seed = SEED)
    void cornerSpeedJustUsesUpTheVoltage(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = 12, max = 48) double volts) {
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, volts));
        double corner = curve.cornerSpeed();
        assertThat(voltage(motor, corner, 0, motor.ratedAmplitude()))
                .isCloseTo(volts, within(1e-9 * volts));
        assertThat(curve.torque(corner)).isCloseTo(motor.holdingTorque(), within(1e-9));
    }

    @Property(tries = 100, seed = SEED)
    void torqueIsZeroFromTheFastestSpeedOn(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = 6, max = 48) double volts) {
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, volts));
        if (Double.isFinite(curve.fastest())) {
            assertThat(curve.torque(curve.fastest() * 1.001)).isZero();
            assertThat(curve.torque(curve.fastest() * 0.999)).isPositive();
        } else {
            // V Z = k_t omega R has no root from V = k_t R/(N_r L) on
            double edge = motor.torqueConstant() * motor.resistance();
            assertThat(volts).isGreaterThanOrEqualTo(edge / motor.reactance(1) * 0.999);
        }
    }

    /** The phasor formula is the highest torque over all angles of a voltage of given size. */
    @Property(tries = 60, seed = SEED)
    void pullOutByVoltageIsTheBestVoltageAngle(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = 6, max = 48) double volts,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 400) double speed) {
        DqModel model = new DqModel(motor);
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3600; i++) {
            double angle = 2 * Math.PI * i / 3600;
            double vd = volts * Math.cos(angle);
            double vq = volts * Math.sin(angle);
            best = Math.max(best, model.torque(model.steadyQuadrature(vd, vq, speed)));
        }
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, volts));
        double formula = curve.voltageOnlyTorque(speed);
        // a tenth of a degree off the top of a sine: 4e-7 of its height V k_t/Z
        double height =
                formula
                        + motor.torqueConstant()
                                * motor.torqueConstant()
                                * speed
                                / motor.resistance();
        assertThat(best).isCloseTo(formula, within(1e-6 * height));
    }

    @Property(tries = 800, seed = SEED)
    void steadyCurrentsStandStillAndBalanceThePower(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = -48, max = 48) double vd,
            @ForAll @Scale(4) @DoubleRange(min = -48, max = 48) double vq,
            @ForAll @Scale(4) @DoubleRange(min = -400, max = 400) double speed) {
        DqModel model = new DqModel(motor);
        double id = model.steadyDirect(vd, vq, speed);
        double iq = model.steadyQuadrature(vd, vq, speed);
        assertThat(model.directRate(vd, id, iq, speed)).isCloseTo(0, within(1e-6));
        assertThat(model.quadratureRate(vq, id, iq, speed)).isCloseTo(0, within(1e-6));
        // electrical power = copper heat + mechanical power
        double heat = motor.resistance() * (id * id + iq * iq);
        double shaft = model.torque(iq) * speed;
        double power = DqModel.power(vd, vq, id, iq);
        assertThat(power)
                .isCloseTo(heat + shaft, within(1e-9 * (1 + Math.abs(heat) + Math.abs(shaft))));
    }

    @Test
    void squareWaveReachesFartherThanSine() {
        HybridStepper motor = TypicalStepper.get("17 x 40").motor();
        StepperDrive square =
                new StepperDrive(24, motor.ratedAmplitude(), StepperDrive.Waveform.SQUARE);
        // fundamental of a square wave: 4/pi
        assertThat(square.voltageAmplitude()).isCloseTo(24 * 4 / Math.PI, within(1e-12));
        assertThat(new ElectricalPullOut(motor, square).torque(100))
                .isGreaterThan(
                        new ElectricalPullOut(motor, StepperDrive.rated(motor, 24)).torque(100));
    }

    @Test
    void supplyTooLowForTheCurrentHasNoCorner() {
        HybridStepper motor = new HybridStepper(0.12, 0.67, 9.2, 7.2e-3, 50, 1.8e-6, 0.005);
        ElectricalPullOut curve = new ElectricalPullOut(motor, StepperDrive.rated(motor, 5));
        assertThat(curve.cornerSpeed()).isZero();
        // at rest Ohm's law limits the current
        assertThat(curve.torque(0)).isCloseTo(motor.torqueConstant() * 5 / 9.2, within(1e-12));
    }

    @Test
    void measuredCurveJoinsItsPointsAndEndsAtTheLast() {
        MeasuredPullOut curve =
                new MeasuredPullOut(
                        List.of(
                                new MeasuredPullOut.Point(5, 0.3),
                                new MeasuredPullOut.Point(10, 0.2),
                                new MeasuredPullOut.Point(30, 0.1)));
        assertThat(curve.torque(0)).isEqualTo(0.3);
        assertThat(curve.torque(5)).isEqualTo(0.3);
        assertThat(curve.torque(7.5)).isCloseTo(0.25, within(1e-15));
        assertThat(curve.torque(-20)).isCloseTo(0.15, within(1e-15));
        assertThat(curve.torque(30)).isEqualTo(0.1);
        assertThat(curve.torque(30.0001)).isZero();
        assertThat(curve.fastest()).isEqualTo(30);
    }

    @Test
    void measuredCurveRefusesDisorder() {
        assertThatThrownBy(() -> new MeasuredPullOut(List.of()))
                .hasMessage("pull-out curve has 0 points, allowed: at least 1");
        List<MeasuredPullOut.Point> points =
                List.of(new MeasuredPullOut.Point(5, 0.3), new MeasuredPullOut.Point(5, 0.2));
        assertThatThrownBy(() -> new MeasuredPullOut(points))
                .hasMessageContaining("pull-out point 2 has speed 5.0 rad/s");
    }

    @Property(tries = 500, seed = SEED)
    void stiffnessIsTheSlopeOfTheTorque(
            @ForAll("motors") HybridStepper motor,
            @ForAll @Scale(4) @DoubleRange(min = -3, max = 3) double command,
            @ForAll @Scale(4) @DoubleRange(min = -0.05, max = 0.05) double rotor) {
        LoadAngle angle = motor.loadAngle();
        double h = 1e-7;
        double slope =
                -(angle.torque(command, rotor + h) - angle.torque(command, rotor - h)) / (2 * h);
        double scale = angle.standstillStiffness();
        assertThat(angle.stiffness(command, rotor)).isCloseTo(slope, within(1e-6 * scale));
    }

    @Test
    void detentHelpsAtOnePhaseAndHindersBetweenTwo() {
        LoadAngle angle = new LoadAngle(0.2, 0.015, 50);
        double lag = Math.toRadians(30);
        double onePhase = angle.torque(0, -lag / 50);
        double twoPhase = angle.torque(Math.PI / 4, (Math.PI / 4 - lag) / 50);
        double detent = 0.015 * Math.sin(4 * lag);
        assertThat(onePhase).isCloseTo(0.1 + detent, within(1e-12));
        assertThat(angle.torqueAtRest(lag)).isCloseTo(onePhase, within(1e-12));
        assertThat(twoPhase).isCloseTo(0.1 - detent, within(1e-12));
    }

    @Test
    void switchedOffMotorRestsAtEveryFullStep() {
        HybridStepper motor = TypicalStepper.get("17 x 40").motor();
        LoadAngle off = motor.loadAngle(0);
        double step = 2 * Math.PI / motor.fullSteps();
        for (int i = 0; i < 200; i++) {
            assertThat(off.torque(0, i * step)).isCloseTo(0, within(1e-12));
            assertThat(off.stiffness(0, i * step)).isPositive();
        }
        assertThat(off.lag(0.01)).isEmpty();
    }

    @Test
    void stepsAreLostFourAtATime() {
        LoadAngle angle = new LoadAngle(0.4, 0, 50);
        assertThat(angle.lag(0.41)).isEmpty();
        assertThat(angle.shaftError(-0.5)).isEmpty();
        assertThat(angle.lag(-0.2).orElseThrow()).isCloseTo(-Math.PI / 6, within(1e-12));
        assertThat(LoadAngle.lostSteps(3)).isZero();
        assertThat(LoadAngle.lostSteps(2 * Math.PI + 0.4)).isEqualTo(4);
        assertThat(LoadAngle.lostSteps(-4 * Math.PI)).isEqualTo(-8);
        assertThat(LoadAngle.runningTorque(Math.PI / 2, 0.3)).isEqualTo(0.3);
    }

    @Test
    void framesFollowNemaIcs16() {
        // NEMA ICS 16 size 17: hole spacing 1.220 in
        assertThat(MotorFrame.get(17).face().holeSpacing()).isCloseTo(1.220 * 0.0254, within(2e-5));
        // four holes on a square: bolt circle = spacing times sqrt 2
        for (MotorFrame frame : MotorFrame.catalog().all()) {
            MotorFrame.Face face = frame.face();
            assertThat(face.boltCircle())
                    .isCloseTo(face.holeSpacing() * Math.sqrt(2), within(1e-4));
        }
        assertThat(MotorFrame.find(18)).isEmpty();
        assertThatThrownBy(() -> MotorFrame.get(18)).hasMessageContaining("nearest: ");
        assertThat(MotorFrame.catalog().names()).containsExactly("8", "11", "14", "17");
    }
}
