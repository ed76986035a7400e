// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import java.util.ArrayList;
import java.util.List;

/**
 * Chain of point masses of 1 kg on massless bars of 1 m, gravity along -y, hinged at the origin.
 */
public final class Pendulums {
    private final Mechanism mechanism = new Mechanism();
    private final List<Body> bars = new ArrayList<>();

    /**
     * @param count number of bars in line
     * @param angle of all bars from the hanging position [rad]
     */
    public Pendulums(int count, double angle) {
        mechanism.gravity(new Vec3(0, -9.81, 0));
        Rotation turn = Rotation.about(Vec3.Z, angle);
        Vec3 along = turn.apply(new Vec3(0, -1, 0));
        for (int i = 0; i < count; i++) {
            Vec3 pivot = along.times(i);
            MassProperties mass = MassProperties.point(1, new Vec3(0, -1, 0));
            bars.add(mechanism.body("bar " + i, new Pose(pivot, turn), mass));
            Body on = i == 0 ? mechanism.base() : bars.get(i - 1);
            mechanism.joint("hinge " + i, JointKind.REVOLUTE, on, bars.get(i), pivot, Vec3.Z);
        }
    }

    public Mechanism mechanism() {
        return mechanism;
    }

    public Stepper stepper(double step) {
        return new Stepper(mechanism, mechanism.start(), Settings.ofStep(step));
    }

    /** Position of mass {@code i} [m]. */
    public double[] mass(State s, int i) {
        int k = 3 * bars.get(i).index();
        return new double[] {s.x[k], s.x[k + 1]};
    }

    /** Angular rate of bar {@code i} [rad/s]. */
    public double rate(State s, int i) {
        return s.w[3 * bars.get(i).index() + 2];
    }

    /** Kinetic plus potential energy, zero at the hinge [J]. */
    public double energy(State s) {
        double sum = 0;
        for (Body b : bars) {
            int i = b.index();
            double v2 = s.v[6 * i] * s.v[6 * i] + s.v[6 * i + 1] * s.v[6 * i + 1];
            sum += 0.5 * v2 + 9.81 * s.x[3 * i + 1];
        }
        return sum;
    }
}
