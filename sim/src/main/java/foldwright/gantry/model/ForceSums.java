// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/**
 * Sums of all forces on bridge and carriage; the tensions of the belts come about on the way.
 *
 * <p>Sums are held in local variables until the bodies get them. A field would be written for every
 * section, and what is written and read again at once costs a wait for memory.
 */
final class ForceSums {
    private final BeltSprings belts;
    private final CarriageForces rail;
    private final LegForces legs;
    private final RotorSet axles;
    private final double oby;

    ForceSums(
            BeltSprings belts,
            CarriageForces rail,
            LegForces legs,
            RotorSet axles,
            BodyMass bridge) {
        this.belts = belts;
        this.rail = rail;
        this.legs = legs;
        this.axles = axles;
        oby = -bridge.centreY();
    }

    /** Sets tensions and the forces on both bodies, after the other parts have set theirs. */
    void evaluate(MovingBody bridge, MovingBody carriage) {
        double s = rail.place();
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
        for (MirrorPair p = belts.firstCouple; p != null; p = p.next) {
            BeltSpring a = p.right;
            BeltSpring b = p.left;
            double t = a.tighten(a.even(yb, yc) + a.odd(xb, th, xc, tc), a.length(y) + a.longer(s));
            double u = b.tighten(b.even(yb, yc) + b.odd(xb, th, xc, tc), b.length(y) + b.longer(s));
            bx += t * a.g0 + u * b.g0;
            by += t * a.g1 + u * b.g1;
            bt += t * a.g2 + u * b.g2;
            kx += t * a.g3 + u * b.g3;
            ky += t * a.g4 + u * b.g4;
            kt += t * a.g5 + u * b.g5;
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
        for (BeltSpring a = belts.firstCentred; a != null; a = a.next) {
            double t = a.tighten(a.even(yb, yc), a.length(y));
            by = fma(t, a.g1, by);
            ky = fma(t, a.g4, ky);
        }
        double along = rail.along();
        double across = rail.force();
        bridge.fx = (legs.side() - bx) - along;
        bridge.fy = (across - legs.friction()) - by;
        bridge.moment = rail.onBridge() + ((legs.moment() - bt) - axles.onBridge());
        carriage.fx = along - kx;
        carriage.fy = -across - ky;
        carriage.moment = -rail.onCarriage() - (kt + axles.onCarriage());
    }
}
