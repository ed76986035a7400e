// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

/**
 * Complete elliptic integrals by the arithmetic-geometric mean (Abramowitz &amp; Stegun 17.6), to
 * rounding.
 */
final class EllipticIntegrals {
    private static final int ROUNDS = 40;

    private EllipticIntegrals() {}

    /** K(m), first kind, for parameter m = k^2 in [0, 1). */
    static double first(double m) {
        double a = 1;
        double b = Math.sqrt(1 - m);
        for (int i = 0; i < ROUNDS && Math.abs(a - b) > 1e-16 * a; i++) {
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
        }
        return Math.PI / (2 * a);
    }

    /** E(m), second kind, for parameter m = k^2 in [0, 1). */
    static double second(double m) {
        double a = 1;
        double b = Math.sqrt(1 - m);
        double sum = m / 2;
        double power = 0.5;
        for (int i = 0; i < ROUNDS && Math.abs(a - b) > 1e-16 * a; i++) {
            double c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            power *= 2;
            sum += power * c * c;
        }
        return Math.PI / (2 * a) * (1 - sum);
    }
}
