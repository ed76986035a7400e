// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.ArmLoad;
import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.Finding;
import foldwright.lift.ForceCurve;
import foldwright.lift.HandDrive;
import foldwright.lift.HoldResult;
import foldwright.lift.MotorLoad;
import foldwright.lift.PinLoad;
import foldwright.lift.ScrewLoad;
import foldwright.lift.Shares;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.SteadyRise;
import foldwright.machine.drive.StepperDrive;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.part.PullOutPoints;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.Upright;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs by the short laws of the trade (foot force, pin friction, thread, belt), for tests of what
 * is made of results: they need no solver, and their numbers can be followed on paper. Upright
 * coils by rate only.
 */
public final class HandRuns implements Runs {
    private static final double GRAVITY = 9.81;

    @Override
    public ForceCurve curve(Machine m) {
        double flat = Bench.flat(m);
        double top = Bench.top(m);
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i <= 100; i++) {
            heights.add(flat + (top - flat) * i / 100);
        }
        List<Finding> findings = new ArrayList<>();
        for (HelperSpring s : m.springs()) {
            double h = coil(s)[1] - ((Upright) s.place()).gapAtPins();
            findings.add(
                    new Finding(
                            Finding.Kind.SPRING_LETS_GO, s.name(), h, h, h, "The springs let go."));
            heights.add(h);
        }
        heights.sort(null);
        List<CurvePoint> up = new ArrayList<>();
        List<CurvePoint> down = new ArrayList<>();
        for (double h : heights) {
            up.add(point(m, h, Direction.RAISING));
            down.add(point(m, h, Direction.LOWERING));
        }
        return new ForceCurve(m.name(), up, down, findings);
    }

    /** Rate [N/m] and free length [m]. */
    private static double[] coil(HelperSpring s) {
        if (s.law() instanceof RatedCoil r) {
            return new double[] {r.rate(), r.freeLength()};
        }
        var c = (foldwright.machine.spring.Coil) s.law();
        double rate =
                79.5e9
                        * Math.pow(c.wire(), 4)
                        / (8 * Math.pow(c.meanDiameter(), 3) * c.activeCoils());
        return new double[] {rate, c.freeLength()};
    }

    private static double springs(Machine m, double h) {
        double force = 0;
        for (HelperSpring s : m.springs()) {
            double gap = h + ((Upright) s.place()).gapAtPins();
            force += s.count() * coil(s)[0] * Math.max(0, coil(s)[1] - gap);
        }
        return force;
    }

    private static CurvePoint point(Machine m, double height, Direction direction) {
        int n = m.lift().stages();
        double theta = Bench.angle(m, height);
        double gain = n / Math.tan(theta);
        double deck = m.raisedMass() * GRAVITY * gain;
        double arms = 0.5 * m.armMass() * GRAVITY * gain;
        double springs = -springs(m, height) * gain;
        double clean = deck + arms + springs;
        var pin = m.lift().pinAt(PinPlace.CENTRE);
        double q = pin.bearing().friction() * pin.radius() * n / height;
        double rho = (1 + 4 * q) / (1 - 4 * q);
        double pins = Math.abs(clean) * ((Math.pow(rho, n) - 1) / (8 * n * q) - 1);
        double feet = m.lift().sliders().base().friction() * m.raisedMass() * GRAVITY;
        int s = direction.sign();
        Shares foot =
                Shares.NONE
                        .with(Cause.DECK, deck)
                        .with(Cause.ARMS, arms)
                        .with(Cause.SPRINGS, springs)
                        .with(Cause.PINS, s * pins)
                        .with(Cause.GUIDES, s * feet);
        return loads(m, height, direction, foot);
    }

    private static CurvePoint loads(Machine m, double height, Direction direction, Shares foot) {
        double theta = Bench.angle(m, height);
        double gain = m.lift().stages() / Math.tan(theta);
        var thread = m.drive().screw().thread();
        HandDrive drive = new HandDrive(thread.pitchDiameter(), thread.lead(), thread.flankAngle());
        double friction = m.drive().screw().nut().friction();
        double force = foot.total();
        double torque =
                direction == Direction.RAISING
                        ? drive.raiseTorque(force, friction).value()
                        : drive.lowerTorque(force, friction).value();
        double ratio = m.drive().transmission() instanceof BeltReduction b ? b.teeth().ratio() : 1;
        double efficiency =
                m.drive().transmission() instanceof BeltReduction b ? b.efficiency() : 1;
        double needed = torque / ratio / efficiency;
        double perNewton = thread.lead() / (2 * Math.PI) / ratio;
        Shares motor = Shares.NONE;
        double mechanical = 0;
        for (Cause c : Cause.values()) {
            double share = direction.sign() * foot.of(c) * perNewton;
            motor = motor.with(c, share);
            mechanical += share;
        }
        motor =
                motor.with(Cause.THREAD, needed * efficiency - mechanical)
                        .with(Cause.BELT, needed * (1 - efficiency));
        double speed = ((SteadyRise) m.drive().rise()).speed() / gain / thread.lead();
        double turning = 2 * Math.PI * speed;
        var stepper = ((StepperDrive) m.drive().source()).motor();
        double available = ((PullOutPoints) stepper.pullOut()).points().get(0).torque();
        double travel =
                m.lift().arm().length()
                        * (Math.cos(Bench.angle(m, Bench.flat(m))) - Math.cos(theta));
        return new CurvePoint(
                new CurvePoint.Pose(
                        direction,
                        height,
                        theta,
                        ((SteadyRise) m.drive().rise()).speed(),
                        travel,
                        gain),
                force,
                foot,
                new ScrewLoad(force / 2, torque / 2, turning, 0.15, 3500, 900, force / 2 / 2.1e-4),
                new MotorLoad(needed, turning * ratio, available),
                motor,
                new CurvePoint.Parts(
                        List.of(new PinLoad("left centre pin 1", force, 20, force / 4.8e-5)),
                        List.of(
                                new ArmLoad(
                                        "left arm 1 rising",
                                        0.375 * 53 * 0.19 * Math.cos(theta),
                                        force,
                                        4e7))));
    }

    @Override
    public Optional<HoldResult> hold(Machine m) {
        var thread = m.drive().screw().thread();
        double flip =
                new HandDrive(thread.pitchDiameter(), thread.lead(), thread.flankAngle())
                        .holdingFriction()
                        .value();
        List<HoldResult.Point> points = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            double h = Bench.flat(m) + (Bench.top(m) - Bench.flat(m)) * i / 20;
            points.add(
                    new HoldResult.Point(h, HoldResult.Verdict.HOLDS, 100, -0.01, 0.015, flip, 0));
        }
        return Optional.of(
                new HoldResult(
                        m.name(),
                        points,
                        Optional.of(flip),
                        Optional.empty(),
                        "It stays at every height with thread friction of "
                                + Numerals.number(flip)
                                + " and more."));
    }
}
