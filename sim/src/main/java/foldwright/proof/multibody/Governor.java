// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;

/**
 * Flyball governor with stiff spring-dampers as couplers: shaft, two rods with end masses, slider.
 *
 * <p>Source: multibody benchmark library of the University of A Coruna, problem A05; that rods and
 * springs meet the axis is read from its figures.
 */
public final class Governor {
    private static final double SPIN = 2 * Math.PI;
    private static final double ANGLE = Math.PI / 6;
    private final Mechanism mechanism = new Mechanism();
    private final Body shaft;
    private final Body rod;
    private final Body other;
    private final Body slider;

    /** The shaft's top is the origin; z points up. */
    public Governor() {
        mechanism.gravity(new Vec3(0, 0, -9.81));
        Vec3 bar = new Vec3(1, .01, .01);
        MassProperties prism = MassProperties.block(.3, new Vec3(.5, 0, 0), bar);
        MassProperties flying = prism.plus(MassProperties.point(5, new Vec3(1, 0, 0)));
        Pose down = new Pose(Vec3.ZERO, Rotation.about(Vec3.Y, Math.PI / 2));
        shaft = mechanism.body("shaft", down, prism);
        rod = mechanism.body("rod", new Pose(Vec3.ZERO, Rotation.about(Vec3.Y, ANGLE)), flying);
        Rotation back = Rotation.about(Vec3.Y, Math.PI - ANGLE);
        other = mechanism.body("other rod", new Pose(Vec3.ZERO, back), flying);
        MassProperties cube = new MassProperties(3, Vec3.ZERO, Inertia.principal(.005, .005, .005));
        slider = mechanism.body("slider", Pose.at(new Vec3(0, 0, -.5)), cube);
        Body base = mechanism.base();
        mechanism.joint("bearing", JointKind.REVOLUTE, base, shaft, Vec3.ZERO, Vec3.Z);
        mechanism.joint("hinge", JointKind.REVOLUTE, shaft, rod, Vec3.ZERO, Vec3.Y);
        mechanism.joint("other hinge", JointKind.REVOLUTE, shaft, other, Vec3.ZERO, Vec3.Y);
        mechanism.joint("sleeve", JointKind.PRISMATIC, shaft, slider, new Vec3(0, 0, -.5), Vec3.Z);
        spring("spring", rod);
        spring("other spring", other);
    }

    private void spring(String name, Body of) {
        mechanism.law(
                name,
                mechanism.distance(of.marker(new Vec3(.5, 0, 0)), slider.marker(Vec3.ZERO)),
                Laws.spring(8e5, .5, 4e4));
    }

    public Stepper stepper(double step) {
        State s = mechanism.start();
        Vec3 w = new Vec3(0, 0, SPIN);
        for (Body b : mechanism.bodies().subList(1, 5)) {
            Vec3 c = s.point(b.marker(b.mass().centre()));
            s.move(b, w.cross(c), w);
        }
        return new Stepper(mechanism, s, Settings.ofStep(step));
    }

    /** Rod angle below the horizontal [rad], slider depth [m], shaft rate [rad/s]. */
    public double[] readings(State s) {
        Vec3 tip = s.point(rod.marker(new Vec3(1, 0, 0)));
        return new double[] {
            Math.asin(-tip.z()),
            -s.point(slider.marker(Vec3.ZERO)).z(),
            s.angularVelocity(shaft).z()
        };
    }

    /** Angular momentum about the shaft [kg m2/s]. */
    public double angularMomentum(State s) {
        double sum = 0;
        for (Body b : mechanism.bodies().subList(1, 5)) {
            Vec3 c = s.point(b.marker(b.mass().centre()));
            Vec3 v = s.velocity(b.marker(b.mass().centre()));
            Rotation turn = s.pose(b).attitude();
            Vec3 own =
                    turn.apply(
                            b.mass().inertia().apply(turn.inverse().apply(s.angularVelocity(b))));
            sum += b.mass().mass() * (c.x() * v.y() - c.y() * v.x()) + own.z();
        }
        return sum;
    }
}
