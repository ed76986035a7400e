// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/** Spring energy and heat of blocks, beam and rails, from the state of a kernel. */
final class GuideEnergy {
    private final GantryKernel k;

    GuideEnergy(GantryKernel kernel) {
        k = kernel;
    }

    /** Spring energy [J]. */
    double stored() {
        double sum = 0;
        for (LateralSpring j : k.guide.lateral) {
            double d = j.beyond(j.way(k.bridge.x, k.bridge.yaw));
            sum += 0.5 * j.stiffness * d * d;
        }
        for (YawSpring j : k.guide.yaw) {
            double d = j.beyond(k.bridge.yaw - k.squareness);
            sum += 0.5 * j.stiffness * d * d;
        }
        double[] d = k.rail.ways(k.bridge, k.carriage);
        double[] f = k.rail.resistance(d[0], d[1]);
        return sum + 0.5 * (f[0] * d[0] + f[1] * d[1]);
    }

    /**
     * Heat of damping and of rail friction: forces at the predicted velocities, times the true
     * velocities given [W].
     */
    double heat(double h, double ux, double uy, double ut, double cx, double cy, double ct) {
        double half = 0.5 * h;
        double px = k.bridge.vx + half * k.bridge.ax;
        double py = k.bridge.vy + half * k.bridge.ay;
        double pt = k.bridge.vyaw + half * k.bridge.ayaw;
        double power = 0;
        for (LateralSpring j : k.guide.lateral) {
            double lever = j.lever();
            power += j.stiffness * k.guideDamping * (px - lever * pt) * (ux - lever * ut);
        }
        for (YawSpring j : k.guide.yaw) {
            power += j.stiffness * k.guideDamping * pt * ut;
        }
        power += k.legs.frictionPower(uy, ut);
        power += k.rail.bristle() * along(ux, ut, cx, ct);
        double[] f =
                k.rail.resistance(
                        k.guideDamping
                                * across(
                                        px,
                                        py,
                                        pt,
                                        k.carriage.vx + half * k.carriage.ax,
                                        k.carriage.vy + half * k.carriage.ay,
                                        k.carriage.vyaw + half * k.carriage.ayaw),
                        k.guideDamping * (k.carriage.vyaw + half * k.carriage.ayaw - pt));
        return power + f[0] * across(ux, uy, ut, cx, cy, ct) + f[1] * (ct - ut);
    }

    private double along(double ux, double ut, double cx, double ct) {
        return cx - k.ocy * ct - ux + k.oby * ut;
    }

    private double across(double ux, double uy, double ut, double cx, double cy, double ct) {
        return cy
                + k.ocx * ct
                - uy
                - k.obx * ut
                - along(ux, ut, cx, ct) * k.bridge.yaw
                - k.carriagePlace() * ut;
    }
}
