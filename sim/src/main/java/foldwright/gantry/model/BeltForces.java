// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** Pull of all belt sections on bridge, carriage and rotors. */
final class BeltForces {
    private final BeltSprings belts;
    private final double damping;
    private final double oby;
    private final DampedPlace d = new DampedPlace();
    private double least;
    private double most;

    BeltForces(BeltSprings belts, GantryModel model) {
        this.belts = belts;
        damping = model.damping().belt();
        oby = -model.bridge().centreY();
    }

    /**
     * Adds the forces.
     *
     * @param s place of the carriage on the bridge [m]
     */
    void evaluate(MovingBody bridge, MovingBody carriage, double s) {
        DampedPlace d = this.d;
        d.xb = fma(damping, bridge.ux, bridge.x);
        d.yb = fma(damping, bridge.uy, bridge.y);
        d.th = fma(damping, bridge.uyaw, bridge.yaw);
        d.xc = fma(damping, carriage.ux, carriage.x);
        d.yc = fma(damping, carriage.uy, carriage.y);
        d.tc = fma(damping, carriage.uyaw, carriage.yaw);
        d.s = s;
        d.y = bridge.y + oby;
        double px = 0;
        double py = 0;
        double pt = belts.pretensionStiffness * bridge.yaw;
        double cx = 0;
        double cy = 0;
        double ct = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (BeltPair pair = belts.first; pair != null; pair = pair.next) {
            BeltSpring a = pair.first;
            double t = a.pull(d);
            low = t < low ? t : low;
            high = t > high ? t : high;
            BeltSpring b = pair.second;
            if (b == null) {
                px = fma(t, a.g0, px);
                py = fma(t, a.g1, py);
                pt = fma(t, a.g2, pt);
                cx = fma(t, a.g3, cx);
                cy = fma(t, a.g4, cy);
                ct = fma(t, a.g5, ct);
            } else {
                double w = b.pull(d);
                low = w < low ? w : low;
                high = w > high ? w : high;
                px += t * a.g0 + w * b.g0;
                py += t * a.g1 + w * b.g1;
                pt += t * a.g2 + w * b.g2;
                cx += t * a.g3 + w * b.g3;
                cy += t * a.g4 + w * b.g4;
                ct += t * a.g5 + w * b.g5;
            }
        }
        least = low;
        most = high;
        bridge.fx -= px;
        bridge.fy -= py;
        bridge.moment -= pt;
        carriage.fx -= cx;
        carriage.fy -= cy;
        carriage.moment -= ct;
    }

    /** Smallest tension at the last evaluation [N]. */
    double least() {
        return least;
    }

    /** Largest tension at the last evaluation [N]. */
    double most() {
        return most;
    }
}
