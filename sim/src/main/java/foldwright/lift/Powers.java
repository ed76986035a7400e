// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.ArmPart;
import foldwright.lift.Linkage.PinPart;
import foldwright.lift.Linkage.SliderPart;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.solve.Equilibrium;

/**
 * Where the power goes that the screws put into the linkage, by cause [W].
 *
 * <p>With velocities that satisfy every joint, balance of loads makes the power of the drivers
 * equal the sum of what weights, springs, friction rows and inertia take: the shares are exact at
 * the pose. What elastic joints take is the remainder.
 */
final class Powers {
    private final LiftModel model;
    private final double[] byCause = new double[Cause.values().length];

    Powers(LiftModel model) {
        this.model = model;
    }

    /** Powers by cause, in the order of {@link Cause}; the array is reused. */
    double[] of(Equilibrium balance, State s) {
        double gravity = -model.mechanism().gravity().z();
        Linkage linkage = model.linkage();
        java.util.Arrays.fill(byCause, 0);
        add(Cause.DECK, weight(linkage.deck(), s, gravity));
        for (ArmPart a : linkage.arms()) {
            add(Cause.ARMS, weight(a.body(), s, gravity));
        }
        for (SpringPart p : model.springs()) {
            double x = p.extent(p.along().value(s));
            add(Cause.SPRINGS, -p.law().force(x) * p.sense() * p.along().rate(s));
        }
        for (PinPart p : linkage.pins()) {
            add(Cause.PINS, heat(p.friction(), balance, s));
        }
        for (SliderPart p : linkage.sliders()) {
            for (Friction f : p.frictions()) {
                add(Cause.GUIDES, heat(f, balance, s));
            }
        }
        for (Body b : model.mechanism().bodies()) {
            add(Cause.INERTIA, b.isBase() ? 0 : kinetic(b, s));
        }
        double rest = drivers(balance, s);
        for (double p : byCause) {
            rest -= p;
        }
        add(Cause.WIND_UP, rest);
        return byCause;
    }

    private void add(Cause cause, double power) {
        byCause[cause.ordinal()] += power;
    }

    private static double weight(Body b, State s, double gravity) {
        return b.mass().mass() * gravity * s.v[6 * b.index() + 2];
    }

    private static double heat(Friction f, Equilibrium balance, State s) {
        return -balance.load(f) * f.coordinate().rate(s);
    }

    /** d/dt of the kinetic energy: m a·v + w·J w'. */
    private static double kinetic(Body b, State s) {
        int k = 6 * b.index();
        double linear = s.a[k] * s.v[k] + s.a[k + 1] * s.v[k + 1] + s.a[k + 2] * s.v[k + 2];
        Inertia j = b.mass().inertia();
        Vec3 turn = j.apply(new Vec3(s.a[k + 3], s.a[k + 4], s.a[k + 5]));
        return b.mass().mass() * linear
                + turn.x() * s.v[k + 3]
                + turn.y() * s.v[k + 4]
                + turn.z() * s.v[k + 5];
    }

    /** Power of all screws into the linkage [W]. */
    double drivers(Equilibrium balance, State s) {
        double sum = 0;
        for (ScrewPart p : model.screws()) {
            sum += balance.load(p.row()) * p.length().rate(s);
        }
        return sum;
    }
}
