// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

/**
 * Decimal digits by plain arithmetic, without decimal numbers as objects. Exact wherever it
 * answers: numbers so near to the middle between two roundings that a rounding error could decide
 * are left in doubt, for the exact way.
 */
final class PlainDigits {
    /** The answer where the exact way must decide. */
    static final long IN_DOUBT = -1;

    private static final char NARROW = '\u202F';
    private static final char MINUS = '\u2212';

    /** Digits that a double surely has, and more than a few roundings take away. */
    private static final double MOST = 1e9;

    private static final double NEAR = 1e-5;
    private static final double[] POWER = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

    private PlainDigits() {}

    /** The size of a value in units of its last decimal, rounded; {@link #IN_DOUBT} if so. */
    static long scaled(double value, int decimals) {
        double size =
                Math.abs(value)
                        * (decimals >= 0 && decimals < POWER.length ? POWER[decimals] : Double.NaN);
        if (!(size < MOST)) {
            return IN_DOUBT;
        }
        double floor = Math.floor(size);
        double rest = size - floor;
        if (Math.abs(rest - 0.5) < NEAR) {
            return IN_DOUBT;
        }
        return (long) floor + (rest > 0.5 ? 1 : 0);
    }

    /**
     * Decimals that show a value with three digits: 3 less those before the point, once rounded.
     * {@link #IN_DOUBT} if so, or if there are more than nine.
     */
    static int decimals(double value) {
        double size = Math.abs(value);
        for (int decimals = 0; decimals < POWER.length; decimals++) {
            // From 99.95 on a number takes the digits of a hundred.
            double parts = size * POWER[decimals] / 99.95;
            if (Math.abs(parts - 1) < NEAR) {
                return (int) IN_DOUBT;
            }
            if (parts > 1) {
                return decimals;
            }
        }
        return size == 0 ? 0 : (int) IN_DOUBT;
    }

    /** Prints what {@link #scaled} gave: groups of three before the point, a true minus. */
    static StringBuilder print(long scaled, int decimals, double value, StringBuilder out) {
        if (value < 0 && scaled > 0) {
            out.append(MINUS);
        }
        long power = (long) POWER[decimals];
        long whole = scaled / power;
        boolean begun = false;
        for (int place = POWER.length - 1; place >= 0; place--) {
            long digit = whole / (long) POWER[place] % 10;
            begun |= digit > 0 || place == 0;
            if (begun) {
                out.append((char) ('0' + digit));
                if (place > 0 && place % 3 == 0) {
                    out.append(NARROW);
                }
            }
        }
        if (decimals > 0) {
            out.append('.');
            for (int place = decimals - 1; place >= 0; place--) {
                out.append((char) ('0' + scaled / (long) POWER[place] % 10));
            }
        }
        return out;
    }
}
