// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** Pull of all belt sections on bridge, carriage and rotors. */
final class BeltForces {
    private final BeltSprings belts;
    private final double damping;
    private final double oby;
    private final DampedPlace d = new DampedPlace();

    // On bridge and carriage, reversed sign [N, N m].
    double px;
    double py;
    double pt;
    double cx;
    double cy;
    double ct;

    BeltForces(BeltSprings belts, GantryModel model) {
        this.belts = belts;
        damping = model.damping().belt();
        oby = -model.bridge().centreY();
    }

    /**
     * Tensions and their sums on both bodies.
     *
     * @param s place of the carriage on the bridge [m]
     * @param half half a step, which predicts the velocity [s]
     */
    void evaluate(MovingBody bridge, MovingBody carriage, double s, double half) {
        DampedPlace d = this.d;
        d.xb = fma(damping, bridge.speedX(half), bridge.x);
        d.yb = fma(damping, bridge.speedY(half), bridge.y);
        d.th = fma(damping, bridge.speedYaw(half), bridge.yaw);
        d.xc = fma(damping, carriage.speedX(half), carriage.x);
        d.yc = fma(damping, carriage.speedY(half), carriage.y);
        d.tc = fma(damping, carriage.speedYaw(half), carriage.yaw);
        d.s = s;
        d.y = bridge.y + oby;
        sum(belts.pretensionStiffness * bridge.yaw);
    }

    /** Sums in local variables: a field would be written back for every section. */
    private void sum(double pretensionMoment) {
        double bx = 0;
        double by = 0;
        double bt = pretensionMoment;
        double kx = 0;
        double ky = 0;
        double kt = 0;
        for (BeltSpring a = belts.firstAlone; a != null; a = a.next) {
            double t = a.pull(d);
            bx = fma(t, a.g0, bx);
            by = fma(t, a.g1, by);
            bt = fma(t, a.g2, bt);
            kx = fma(t, a.g3, kx);
            ky = fma(t, a.g4, ky);
            kt = fma(t, a.g5, kt);
        }
        for (MirrorPair p = belts.firstPair; p != null; p = p.next) {
            p.pull(d);
            BeltSpring a = p.right;
            double even = p.sum;
            double odd = p.difference;
            bx = fma(odd, a.g0, bx);
            by = fma(even, a.g1, by);
            bt = fma(odd, a.g2, bt);
            kx = fma(odd, a.g3, kx);
            ky = fma(even, a.g4, ky);
            kt = fma(odd, a.g5, kt);
        }
        px = bx;
        py = by;
        pt = bt;
        cx = kx;
        cy = ky;
        ct = kt;
    }
}
