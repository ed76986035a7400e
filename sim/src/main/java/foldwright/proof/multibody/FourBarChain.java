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
 * Chain of N four-bar windows: N + 1 cranks on the base and N couplers, uniform links of 1 m and 1
 * kg, gravity along -y, upright start with 1 m/s in x at the crank tips. At each horizontal
 * position its mobility jumps from 1 to N + 1; the true motion keeps all cranks parallel.
 *
 * <p>Source: multibody benchmark library of the University of A Coruna, problem A02 (2005); upright
 * start from memory.
 */
public final class FourBarChain {
    private final int loops;
    private final Mechanism mechanism = new Mechanism();
    private final List<Body> cranks = new ArrayList<>();
    private final List<Body> couplers = new ArrayList<>();

    public FourBarChain(int loops) {
        this.loops = loops;
        mechanism.gravity(new Vec3(0, -9.81, 0));
        for (int i = 0; i <= loops; i++) {
            cranks.add(link("crank " + i, new Vec3(i, 0, 0), new Vec3(i, 1, 0)));
            if (i > 0) {
                couplers.add(link("coupler " + i, new Vec3(i - 1, 1, 0), new Vec3(i, 1, 0)));
            }
        }
        for (int i = 0; i <= loops; i++) {
            pin("foot " + i, mechanism.base(), cranks.get(i), new Vec3(i, 0, 0));
            if (i > 0) {
                Body coupler = couplers.get(i - 1);
                pin("left " + i, cranks.get(i - 1), coupler, new Vec3(i - 1, 1, 0));
                pin("right " + i, cranks.get(i), coupler, new Vec3(i, 1, 0));
            }
        }
    }

    private Body link(String name, Vec3 a, Vec3 b) {
        return mechanism.body(name, Pose.at(a), MassProperties.rod(1, Vec3.ZERO, b.minus(a)));
    }

    private void pin(String name, Body a, Body b, Vec3 at) {
        mechanism.joint(name, JointKind.REVOLUTE, a, b, at, Vec3.Z);
    }

    public Mechanism mechanism() {
        return mechanism;
    }

    /** Upright, moving at 1 m/s. */
    public State start() {
        State s = mechanism.start();
        for (Body b : cranks) {
            s.move(b, new Vec3(0.5, 0, 0), new Vec3(0, 0, -1));
        }
        for (Body b : couplers) {
            s.move(b, new Vec3(1, 0, 0), Vec3.ZERO);
        }
        return s;
    }

    public Stepper stepper(Settings settings) {
        return new Stepper(mechanism, start(), settings);
    }

    /** Tip of the first crank [m]. */
    public Vec3 tip(State s) {
        return s.point(cranks.get(0).marker(new Vec3(0, 1, 0)));
    }

    /** Kinetic plus potential energy, zero at the ground [J]. */
    public double energy(State s) {
        double sum = 0;
        for (Body b : mechanism.bodies().subList(1, mechanism.bodies().size())) {
            int i = b.index();
            double v2 = s.v[6 * i] * s.v[6 * i] + s.v[6 * i + 1] * s.v[6 * i + 1];
            double w = s.v[6 * i + 5];
            sum += 0.5 * v2 + 0.5 / 12 * w * w + 9.81 * s.x[3 * i + 1];
        }
        return sum;
    }

    /** Number of windows. */
    public int loops() {
        return loops;
    }
}
