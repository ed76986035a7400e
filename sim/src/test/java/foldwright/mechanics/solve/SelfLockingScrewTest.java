// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.LawForce;
import foldwright.mechanics.joint.Combination;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Coupling;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PrescribedMotion;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A 5 kg nut on an upright Tr10x2 screw. Holds while mu / cos 15 deg exceeds tan(lead angle) = 2 /
 * (9 pi), and needs F d2/2 tan(lead angle + friction angle) to rise (handbook formula of the
 * trapezoidal screw, e.g. Mott, Machine Elements in Mechanical Design, sec. 17).
 */
class SelfLockingScrewTest {
    private static final double LEAD = 0.002;
    private static final double RADIUS = 0.0045;
    private static final double SLOPE = LEAD / (2 * Math.PI * RADIUS);
    private static final double WEIGHT = 5 * 9.81;

    private static final class Rig {
        private final Mechanism m = new Mechanism();
        private final Body nut;
        private final Friction flank;

        Rig(double mu) {
            m.gravity(new Vec3(0, 0, -9.81));
            Vec3 at = new Vec3(0, 0, .05);
            Body screw =
                    m.body("screw", Pose.ORIGIN, MassProperties.cylinder(.1, at, Vec3.Z, .005, .1));
            nut =
                    m.body(
                            "nut",
                            Pose.at(at),
                            MassProperties.block(5, Vec3.ZERO, new Vec3(.1, .1, .02)));
            m.joint("bearing", JointKind.REVOLUTE, m.base(), screw, Vec3.ZERO, Vec3.Z);
            m.joint("guide", JointKind.PRISMATIC, m.base(), nut, new Vec3(.05, 0, .05), Vec3.Z);
            Coordinate turn = m.angle(screw, nut, Vec3.Z);
            Coordinate travel = m.travel(screw, nut, at, Vec3.Z);
            Coupling thread =
                    m.couple("thread", 0, List.of(travel, turn), 1, -LEAD / (2 * Math.PI));
            double lead = Math.atan(SLOPE);
            Coordinate slip =
                    new Combination(List.of(turn, travel), RADIUS * Math.cos(lead), Math.sin(lead));
            double effective = mu / Math.cos(Math.toRadians(15));
            flank =
                    m.friction(
                            "flank",
                            slip,
                            FrictionBound.transmitted(thread, effective / Math.cos(lead)),
                            1e-8);
        }

        private Body screw() {
            return m.bodies().get(1);
        }

        private double height(Stepper run) {
            return run.state().x[3 * nut.index() + 2];
        }
    }

    @Test
    void holdsForAnHourWithoutCreep() {
        Rig rig = new Rig(0.15);
        Equilibrium rest = new Statics(rig.m).holding(rig.m.start());
        Stepper run = new Stepper(rig.m, rest, Settings.ofStep(0.1));
        double before = rig.height(run);
        assertThat(run.runTo(3600)).isEqualTo(Stepper.Outcome.DONE);
        // 1e-4 mm in an hour is allowed; a fixed anchor leaves rounding only
        assertThat(rig.height(run)).isCloseTo(before, within(1e-12));
        assertThat(rig.flank.mode()).isEqualTo(Friction.Mode.STICK);
    }

    @Test
    void verdictFlipsAtTheThreadsFriction() {
        double limit = SLOPE * Math.cos(Math.toRadians(15));
        Rig above = new Rig(limit * 1.002);
        Rig below = new Rig(limit * 0.998);
        assertThat(new Statics(above.m).holding(above.m.start()).found()).isTrue();
        Stepper run = new Stepper(below.m, below.m.start(), Settings.ofStep(1e-3));
        run.runTo(1);
        assertThat(below.height(run)).isLessThan(.05 - 1e-4);
    }

    @Test
    void raisingTorqueIsThatOfTheHandbook() {
        Rig rig = new Rig(0.15);
        Driver drive =
                rig.m.drive(
                        "drive",
                        rig.m.angle(rig.m.base(), rig.screw(), Vec3.Z),
                        PrescribedMotion.uniform(0, -1, 0));
        MovingBalance b =
                new Kinetostatics(rig.m).solve(rig.m.start(), Kinetostatics.Inertia.IGNORED);
        double friction = Math.atan(.15 / Math.cos(Math.toRadians(15)));
        double torque = WEIGHT * RADIUS * Math.tan(Math.atan(SLOPE) + friction);
        assertThat(b.outcome()).isEqualTo(MovingBalance.Outcome.BALANCED);
        // exact but for the accuracy of the bounds, 1e-9
        assertThat(Math.abs(b.balance().load(drive))).isCloseTo(torque, within(1e-7 * torque));
    }

    /**
     * Five turns a second by a soft shaft: in the axes of the screw its bearing runs round it, yet
     * nothing changes for the rest of the mechanism, so one factorisation serves many steps.
     */
    @Test
    void aSpinningScrewDoesNotCostAFactorisationAStep() {
        Rig rig = new Rig(0.15);
        Coordinate turn = rig.m.angle(rig.m.base(), rig.screw(), Vec3.Z);
        double speed = 10 * Math.PI;
        LawForce shaft =
                rig.m.law(
                        "shaft",
                        turn,
                        (angle, rate, time, out) -> {
                            out.clear();
                            double target = -speed * Math.min(time, time * time);
                            out.stiffness = 2;
                            out.damping = 0.01;
                            out.force = 2 * (target - angle) + 0.01 * (-speed - rate);
                        });
        Equilibrium rest = new Statics(rig.m).holding(rig.m.start());
        Stepper run = new Stepper(rig.m, rest, Settings.ofStep(5e-3));
        run.runTo(3);
        long factors = run.factorisations();
        long solves = run.solves();
        run.runTo(10);
        double steps = 7 / 5e-3;
        assertThat((run.factorisations() - factors) / steps).isLessThan(0.03);
        assertThat((run.solves() - solves) / steps).isLessThan(1.01);
        double friction = Math.atan(.15 / Math.cos(Math.toRadians(15)));
        double torque = WEIGHT * RADIUS * Math.tan(Math.atan(SLOPE) + friction);
        assertThat(-shaft.force()).isCloseTo(torque, within(1e-6 * torque));
    }
}
