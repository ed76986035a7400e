// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import java.util.ArrayList;
import java.util.List;

/**
 * Andrews' squeezing mechanism: seven bodies, a spring and a constant drive torque in a plane, here
 * as bodies in space with ten full hinges.
 *
 * <p>Source: F. Mazzia, C. Magherini, Test Set for Initial Value Problem Solvers (University of
 * Bari), problem "andrews": parameters, start values, reference at 0.03 s; E. Hairer, G. Wanner,
 * Solving Ordinary Differential Equations II, sec. VII.7. Centres of mass of bodies 3, 5, 7 from
 * memory: they do not affect the motion.
 */
public final class Andrews {
    /**
     * Crank, coupler angle against the crank, and so on, as published: beta, Theta, ..., epsilon.
     */
    private static final double[] START = {
        -0.0617138900142764,
        0,
        0.455279819163070,
        0.222668390165886,
        0.487364979543843,
        -0.222668390165886,
        1.23054744454982
    };

    private static final Vec3 A = new Vec3(-0.06934, -0.00227, 0);
    private static final Vec3 B = new Vec3(-0.03635, 0.03273, 0);
    private static final Vec3 C = new Vec3(0.014, 0.072, 0);
    private static final double TORQUE = 0.033;

    private final Mechanism mechanism = new Mechanism();
    private final List<Body> bodies = new ArrayList<>();
    private final List<Coordinate> turns = new ArrayList<>();

    public Andrews() {
        double beta = START[0];
        double theta = START[1];
        double gamma = START[2];
        double phi = START[3];
        double delta = START[4];
        double omega = START[5];
        double eps = START[6];
        Vec3 q = ray(.007, beta);
        Vec3 p = q.minus(ray(.028, beta + theta));
        Vec3 r45 = A.plus(ray(.04, delta));
        Vec3 r67 = A.plus(down(.04, eps));
        add("crank", .04325, 2.194e-6, ray(.00092, beta));
        add("coupler", .00365, 4.410e-7, q.minus(ray(.0115, beta + theta)));
        add("triangle", .02373, 5.255e-6, B.plus(down(.01874, gamma)).plus(ray(.01043, gamma)));
        add("body 4", .00706, 5.667e-7, r45.plus(down(.02 - .01421, phi + delta)));
        add("body 5", .07050, 1.169e-5, A.plus(ray(.02308, delta)).minus(down(.00916, delta)));
        add("body 6", .00706, 5.667e-7, r67.plus(ray(.02 - .01421, omega + eps)));
        add("body 7", .05498, 1.912e-5, A.plus(down(.01228, eps)).minus(ray(.00449, eps)));
        Body base = mechanism.base();
        hinge("O", base, bodies.get(0), Vec3.ZERO);
        hinge("crank pin", bodies.get(0), bodies.get(1), q);
        hinge("P coupler", bodies.get(2), bodies.get(1), p);
        hinge("P 4", bodies.get(2), bodies.get(3), p);
        hinge("P 6", bodies.get(2), bodies.get(5), p);
        hinge("B", base, bodies.get(2), B);
        hinge("A 5", base, bodies.get(4), A);
        hinge("A 7", base, bodies.get(6), A);
        hinge("4-5", bodies.get(4), bodies.get(3), r45);
        hinge("6-7", bodies.get(6), bodies.get(5), r67);
        Vec3 d = B.plus(down(.018, gamma)).plus(ray(.02, gamma));
        mechanism.law(
                "spring",
                mechanism.distance(
                        base.markerFromBase(Pose.at(C)), bodies.get(2).markerFromBase(Pose.at(d))),
                Laws.spring(4530, .07785, 0));
        for (Body b : bodies) {
            turns.add(mechanism.angle(base, b, Vec3.Z));
        }
        mechanism.law("drive", turns.get(0), Laws.constant(TORQUE));
    }

    private static Vec3 ray(double r, double a) {
        return new Vec3(r * Math.cos(a), r * Math.sin(a), 0);
    }

    private static Vec3 down(double r, double a) {
        return new Vec3(r * Math.sin(a), -r * Math.cos(a), 0);
    }

    private void add(String name, double mass, double inertia, Vec3 centre) {
        Inertia j = Inertia.principal(inertia, inertia, inertia);
        bodies.add(mechanism.body(name, Pose.at(centre), new MassProperties(mass, Vec3.ZERO, j)));
    }

    private void hinge(String name, Body a, Body b, Vec3 at) {
        mechanism.joint(name, JointKind.REVOLUTE, a, b, at, Vec3.Z);
    }

    public Mechanism mechanism() {
        return mechanism;
    }

    /** Integrator at rest in the published start pose, spectral radius 0.9. */
    public Stepper stepper(double step) {
        return new Stepper(mechanism, mechanism.start(), Settings.ofStep(step).spectralRadius(0.9));
    }

    /** The seven published angles beta, Theta, gamma, Phi, delta, Omega, epsilon [rad]. */
    public double[] angles(State s) {
        double[] t = new double[7];
        for (int i = 0; i < 7; i++) {
            turns.get(i).accept(s);
            t[i] = turns.get(i).value(s);
        }
        return relative(t, START);
    }

    /** Their rates [rad/s]. */
    public double[] rates(State s) {
        double[] t = new double[7];
        for (int i = 0; i < 7; i++) {
            t[i] = s.v[6 * bodies.get(i).index() + 5];
        }
        return relative(t, new double[7]);
    }

    /** Their accelerations [rad/s2]. */
    public double[] accelerations(State s) {
        double[] t = new double[7];
        for (int i = 0; i < 7; i++) {
            t[i] = s.a[6 * bodies.get(i).index() + 5];
        }
        return relative(t, new double[7]);
    }

    /** From turns of the bodies to the published angles, some of which are relative. */
    private static double[] relative(double[] t, double[] start) {
        return new double[] {
            start[0] + t[0],
            start[1] + t[1] - t[0],
            start[2] + t[2],
            start[3] + t[3] - t[4],
            start[4] + t[4],
            start[5] + t[5] - t[6],
            start[6] + t[6]
        };
    }
}
