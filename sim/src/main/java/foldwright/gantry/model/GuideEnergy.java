// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/** Spring energy and heat of blocks, beam and rails, from the state of a kernel. */
final class GuideEnergy {
    private final GantryKernel k;

    GuideEnergy(GantryKernel kernel) {
        k = kernel;
    }

    private static double beyond(double value, double free) {
        return value - Math.max(-free, Math.min(free, value));
    }

    /** Spring energy [J]. */
    double stored() {
        GuideArrays g = k.guide;
        double sum = 0;
        for (int j = 0; j < g.lateralCount; j++) {
            double x = k.xb + k.obx - (k.oby + g.along[j]) * k.th + g.along[j] * k.squareness;
            double d = beyond(x, g.lateralPlay[j]);
            sum += 0.5 * g.lateralStiffness[j] * d * d;
        }
        for (int j = 0; j < g.yawCount; j++) {
            double d = beyond(k.th - k.squareness, g.yawPlay[j]);
            sum += 0.5 * g.yawStiffness[j] * d * d;
        }
        double[] d = carriageWays();
        double[] f = carriageForces(d[0], d[1]);
        return sum + 0.5 * (f[0] * d[0] + f[1] * d[1]);
    }

    private double[] carriageWays() {
        double s = k.carriagePlace;
        double c = k.yc + k.ocy + k.ocx * k.tc - k.yb - k.oby - k.obx * k.th - s * k.th;
        return new double[] {
            beyond(c, k.carriageLateralPlay), beyond(k.tc - k.th, k.carriageYawPlay)
        };
    }

    /** Force and moment of blocks and beam in series for ways beyond play [N, N m]. */
    private double[] carriageForces(double c, double psi) {
        double a = k.halfSpan + k.carriagePlace;
        double b = k.halfSpan - k.carriagePlace;
        double c11 = k.lateralCompliance + k.beamFlexibility * a * a * b * b;
        double c12 = k.beamFlexibility * a * b * (b - a);
        double c22 = k.yawCompliance + k.beamFlexibility * (a * a - a * b + b * b) * 2 * k.halfSpan;
        double det = c11 * c22 - c12 * c12;
        return new double[] {(c22 * c - c12 * psi) / det, (c11 * psi - c12 * c) / det};
    }

    /**
     * Heat of damping and of rail friction: forces at the predicted velocities, times the true
     * velocities given [W].
     */
    double heat(double h, double ux, double uy, double ut, double cx, double cy, double ct) {
        double half = 0.5 * h;
        double px = k.vxb + half * k.axb;
        double py = k.vyb + half * k.ayb;
        double pt = k.vth + half * k.ath;
        GuideArrays g = k.guide;
        double power = 0;
        for (int j = 0; j < g.lateralCount; j++) {
            double lever = k.oby + g.along[j];
            power += g.lateralStiffness[j] * k.guideDamping * (px - lever * pt) * (ux - lever * ut);
        }
        for (int j = 0; j < g.yawCount; j++) {
            power += g.yawStiffness[j] * k.guideDamping * pt * ut;
        }
        power += k.bristleLeft * (uy + (k.obx - k.halfSpan) * ut);
        power += k.bristleRight * (uy + (k.obx + k.halfSpan) * ut);
        power += k.bristleCarriage * along(ux, ut, cx, ct);
        double[] f =
                carriageForces(
                        k.guideDamping
                                * across(
                                        px,
                                        py,
                                        pt,
                                        k.vxc + half * k.axc,
                                        k.vyc + half * k.ayc,
                                        k.vtc + half * k.atc),
                        k.guideDamping * (k.vtc + half * k.atc - pt));
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
                - along(ux, ut, cx, ct) * k.th
                - k.carriagePlace * ut;
    }
}
