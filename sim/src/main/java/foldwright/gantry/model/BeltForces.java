// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** Pull of all belt sections on bridge, carriage and rotors. */
final class BeltForces {
    private final BeltSprings belts;
    private final double oby;

    // On bridge and carriage, reversed sign [N, N m].
    double px;
    double py;
    double pt;
    double cx;
    double cy;
    double ct;

    BeltForces(BeltSprings belts, GantryModel model) {
        this.belts = belts;
        oby = -model.bridge().centreY();
    }

    /**
     * Tensions and their sums on both bodies, in local variables: a field would be written back for
     * every section.
     *
     * @param s place of the carriage on the bridge [m]
     */
    void evaluate(MovingBody bridge, MovingBody carriage, double s) {
        double xb = bridge.aheadX;
        double yb = bridge.aheadY;
        double th = bridge.aheadYaw;
        double xc = carriage.aheadX;
        double yc = carriage.aheadY;
        double tc = carriage.aheadYaw;
        double y = bridge.y + oby;
        double bx = 0;
        double by = 0;
        double bt = belts.pretensionStiffness * bridge.yaw;
        double kx = 0;
        double ky = 0;
        double kt = 0;
        for (BeltSpring a = belts.firstAlone; a != null; a = a.next) {
            double t = a.tighten(a.even(yb, yc) + a.odd(xb, th, xc, tc), a.length(y) + a.longer(s));
            bx = fma(t, a.g0, bx);
            by = fma(t, a.g1, by);
            bt = fma(t, a.g2, bt);
            kx = fma(t, a.g3, kx);
            ky = fma(t, a.g4, ky);
            kt = fma(t, a.g5, kt);
        }
        for (MirrorPair p = belts.firstPair; p != null; p = p.next) {
            BeltSpring a = p.right;
            double even = a.even(yb, yc);
            double odd = a.odd(xb, th, xc, tc);
            double length = a.length(y);
            double longer = a.longer(s);
            double right = a.tighten(even + odd, length + longer);
            double left = p.left.tighten(even - odd, length - longer);
            double sum = right + left;
            double difference = right - left;
            bx = fma(difference, a.g0, bx);
            by = fma(sum, a.g1, by);
            bt = fma(difference, a.g2, bt);
            kx = fma(difference, a.g3, kx);
            ky = fma(sum, a.g4, ky);
            kt = fma(difference, a.g5, kt);
        }
        px = bx;
        py = by;
        pt = bt;
        cx = kx;
        cy = ky;
        ct = kt;
    }
}
