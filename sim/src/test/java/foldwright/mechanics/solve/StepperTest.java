// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.Stop;
import foldwright.proof.multibody.Andrews;
import foldwright.proof.multibody.FourBarChain;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/**
 * Promises of the integrator: no allocation, same bits, independence of the frame, typed failure.
 */
class StepperTest {
    @Test
    void allocatesNothingInAStep() {
        Mechanism m = new Mechanism();
        m.gravity(new Vec3(0, 0, -9.81));
        Body b =
                m.body(
                        "block",
                        Pose.ORIGIN,
                        MassProperties.block(1, Vec3.ZERO, new Vec3(.1, .1, .1)));
        PairJoint rail = m.joint("rail", JointKind.PRISMATIC, m.base(), b, Vec3.ZERO, Vec3.X);
        Coordinate way = m.travel(m.base(), b, Vec3.ZERO, Vec3.X);
        m.friction("mu", way, FrictionBound.slide(rail, .05), 1e-8);
        m.law("spring", way, Laws.spring(100, 0, .1));
        m.stop("stop", way, -.05, Stop.Side.ABOVE);
        State start = m.start();
        start.move(b, new Vec3(2, 0, 0), Vec3.ZERO);
        assertThat(bytes(new Stepper(m, start, Settings.ofStep(1e-3)))).isZero();
        assertThat(bytes(new FourBarChain(3).stepper(Settings.ofStep(1e-3)))).isZero();
        assertThat(bytes(new Andrews().stepper(1e-5))).isZero();
    }

    /** Bytes allocated by 500 steps after 500 others. */
    private static long bytes(Stepper run) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        steps(run, 500);
        threads.getCurrentThreadAllocatedBytes();
        long before = threads.getCurrentThreadAllocatedBytes();
        steps(run, 500);
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    private static void steps(Stepper run, int count) {
        for (int i = 0; i < count; i++) {
            run.step();
        }
    }

    @Test
    void givesTheSameBitsAgain() {
        Stepper first = new FourBarChain(5).stepper(Settings.ofStep(1e-3));
        Stepper second = new FourBarChain(5).stepper(Settings.ofStep(1e-3));
        steps(first, 700);
        steps(second, 700);
        assertThat(second.state().x).containsExactly(first.state().x);
        assertThat(second.multipliers()).containsExactly(first.multipliers());
        assertThat(second.solves()).isEqualTo(first.solves());
    }

    /** A spatial pendulum, and the same turned and moved as a whole, move alike. */
    @Test
    void doesNotDependOnTheFrame() {
        Rotation turn = Rotation.about(new Vec3(1, 2, 3), 1.1);
        Pose moved = new Pose(new Vec3(.3, -.2, .5), turn);
        Stepper plain = pendulum(Pose.ORIGIN);
        Stepper other = pendulum(moved);
        steps(plain, 400);
        steps(other, 400);
        Vec3 p = new Vec3(plain.state().x[6], plain.state().x[7], plain.state().x[8]);
        Vec3 q = new Vec3(other.state().x[6], other.state().x[7], other.state().x[8]);
        // chaotic growth of rounding stays small over 0.4 s
        assertThat(q.minus(moved.apply(p)).length()).isCloseTo(0, within(1e-9));
    }

    private static Stepper pendulum(Pose frame) {
        Mechanism m = new Mechanism();
        m.gravity(frame.attitude().apply(new Vec3(0, 0, -9.81)));
        MassProperties rod = MassProperties.block(1, new Vec3(.5, 0, 0), new Vec3(1, .1, .05));
        Body a = m.body("a", frame, rod);
        Body b = m.body("b", frame.times(Pose.at(new Vec3(1, 0, 0))), rod);
        m.joint("ball", JointKind.SPHERICAL, m.base(), a, frame);
        m.joint(
                "cross",
                JointKind.UNIVERSAL,
                a,
                b,
                frame.times(new Pose(new Vec3(1, 0, 0), Rotation.about(Vec3.Y, .7))));
        State s = m.start();
        Vec3 w = frame.attitude().apply(new Vec3(1, 2, -1));
        for (Body body : m.bodies().subList(1, 3)) {
            Vec3 r = s.point(body.marker(body.mass().centre())).minus(frame.position());
            s.move(body, w.cross(r), w);
        }
        return new Stepper(m, s, Settings.ofStep(1e-3));
    }

    @Test
    void errorFallsWithTheSquareOfTheStep() {
        double coarse = tipError(4e-3);
        double fine = tipError(2e-3);
        // 4 for second order; the next order shifts it by some percent
        assertThat(coarse / fine).isBetween(3.6, 4.4);
    }

    /** Error of the chain's tip at 1 s against its closed form, N = 1: see the proof chapter. */
    private static double tipError(double step) {
        FourBarChain chain = new FourBarChain(1);
        Stepper run = chain.stepper(Settings.ofStep(step));
        run.runTo(1);
        Vec3 want = new Vec3(-.260712675, -.965416439, 0);
        return chain.tip(run.state()).minus(want).length();
    }

    @Test
    void lawThatBreaksEndsTheRunWithTimeBodyAndRow() {
        Mechanism m = new Mechanism();
        MassProperties bar = MassProperties.block(1, new Vec3(.1, 0, 0), new Vec3(.2, .02, .02));
        Body b = m.body("crank", Pose.ORIGIN, bar);
        m.joint("pin", JointKind.REVOLUTE, m.base(), b, Vec3.ZERO, Vec3.Z);
        Coordinate turn = m.angle(m.base(), b, Vec3.Z);
        m.law(
                "broken",
                turn,
                (value, rate, time, out) -> {
                    out.clear();
                    out.force = time > 0.1 ? Double.NaN : 1;
                });
        Stepper run = new Stepper(m, m.start(), Settings.ofStep(1e-3));
        assertThat(run.runTo(1)).isEqualTo(Stepper.Outcome.FAILED);
        Failure f = run.failure();
        assertThat(f.cause()).isEqualTo(Failure.Cause.NOT_A_NUMBER);
        // found at the end of the first halved step beyond 0.1 s
        assertThat(f.time()).isBetween(0.1, 0.101);
        assertThat(f.body()).isEqualTo("crank");
        assertThat(f.message()).contains("not a number").contains("crank");
        assertThat(Double.isNaN(run.state().x[3])).as("last good state is kept").isFalse();
    }
}
