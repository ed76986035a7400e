// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Sine of any moderate argument to 6e-12, for places where millions a second are needed: reduction
 * to a half period, then the Taylor series up to the fifteenth power. The first term left out is
 * (pi/2)^17/17! = 6.1e-12.
 */
final class FieldSine {
    private static final double INVERSE_PI = 1 / Math.PI;
    private static final double C3 = -1.0 / 6;
    private static final double C5 = 1.0 / 120;
    private static final double C7 = -1.0 / 5040;
    private static final double C9 = 1.0 / 362880;
    private static final double C11 = -1.0 / 39916800;
    private static final double C13 = 1.0 / 6227020800.0;
    private static final double C15 = -1.0 / 1307674368000.0;

    private FieldSine() {}

    static double of(double x) {
        double halfPeriods = Math.rint(x * INVERSE_PI);
        double r = x - halfPeriods * Math.PI;
        double z = r * r;
        // Estrin's order: pairs side by side, a third of the waiting of Horner's.
        double z2 = z * z;
        double low = C3 + z * C5 + z2 * (C7 + z * C9);
        double high = C11 + z * C13 + z2 * C15;
        double p = r + r * z * (low + z2 * z2 * high);
        return ((long) halfPeriods & 1) == 0 ? p : -p;
    }
}
