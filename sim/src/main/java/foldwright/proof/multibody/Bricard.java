// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import java.util.ArrayList;
import java.util.List;

/**
 * Bricard's overconstrained loop: five thin rods of 1 m and 1 kg along the edges of a cube, six
 * hinges square to both rods they join, gravity along -y. By count it has no freedom; it moves with
 * one.
 *
 * <p>Source: multibody benchmark library of the University of A Coruna, problem A04; R. Bricard,
 * 1897.
 */
public final class Bricard {
    private static final Vec3[] NODES = {
        new Vec3(0, 0, 0),
        new Vec3(1, 0, 0),
        new Vec3(1, -1, 0),
        new Vec3(1, -1, 1),
        new Vec3(0, -1, 1),
        new Vec3(0, 0, 1)
    };
    private static final Vec3[] AXES = {Vec3.Y, Vec3.Z, Vec3.X, Vec3.Y, Vec3.Z, Vec3.X};
    private final Mechanism mechanism = new Mechanism();
    private final List<Body> rods = new ArrayList<>();

    public Bricard() {
        mechanism.gravity(new Vec3(0, -9.81, 0));
        for (int i = 0; i < 5; i++) {
            MassProperties rod = MassProperties.rod(1, Vec3.ZERO, NODES[i + 1].minus(NODES[i]));
            rods.add(mechanism.body("rod " + i, Pose.at(NODES[i]), rod));
        }
        for (int i = 0; i < 6; i++) {
            Body a = i == 0 ? mechanism.base() : rods.get(i - 1);
            Body b = i == 5 ? mechanism.base() : rods.get(i);
            mechanism.joint("hinge " + i, JointKind.REVOLUTE, a, b, NODES[i], AXES[i]);
        }
    }

    public Mechanism mechanism() {
        return mechanism;
    }

    public Stepper stepper(double step) {
        return new Stepper(mechanism, mechanism.start(), Settings.ofStep(step));
    }

    /** Node P3 [m]. */
    public double[] node3(State s) {
        Vec3 p = s.point(rods.get(2).marker(new Vec3(0, 0, 1)));
        return new double[] {p.x(), p.y(), p.z()};
    }
}
