// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/** Results as a person reads them: {@link Printed} with the units in which results are shown. */
public final class Numerals {
    /** Errors below this are told as below this [1]. */
    private static final double LEAST_ERROR = 1e-5;

    private Numerals() {}

    /** The value with its unit, three significant digits. */
    public static String with(double si, Shown unit) {
        return switch (unit) {
            case TIMES -> margin(si);
            case COUNT -> fixed(si, 0);
            case NUMBER -> Printed.number(si);
            default -> Printed.in(unit.symbol(), si);
        };
    }

    /** A number with the given decimals, for columns and ticks. */
    public static String fixed(double value, int decimals) {
        return Printed.number(value, decimals);
    }

    /** A pure number with three significant digits. */
    public static String number(double value) {
        return Printed.number(value);
    }

    /** A number as it was given, without zeros at its end. */
    public static String given(double value) {
        return Printed.given(Dimension.RATIO, value);
    }

    /** A share of a whole in percent, e.g. "4.2 %". */
    public static String percent(double share) {
        double percent = 100 * share;
        return fixed(percent, Math.abs(percent) < 9.95 ? 1 : 0) + "\u00a0%";
    }

    /** An error of a computation in percent; below a thousandth of one its size says nothing. */
    static String error(double share) {
        return share < LEAST_ERROR
                ? "less than 0.001\u00a0%"
                : fixed(100 * share, 100 * share < 0.1 ? 3 : 2) + "\u00a0%";
    }

    /** The same, and that it is not below its bound where it is not. */
    static String error(double share, double bound) {
        return share <= bound
                ? error(share)
                : error(share)
                        + " (more than "
                        + given(100 * bound)
                        + "\u00a0%: not to be relied on)";
    }

    /** A margin, rounded so that it never crosses a limit of a verdict (1.4996 prints 1.49×). */
    public static String margin(double margin) {
        return Printed.margin(margin);
    }

    /** The margin of an outcome, whose rule may be its own. */
    public static String margin(Outcome outcome) {
        return Printed.margin(outcome.margin(), 1, outcome.holdsFrom());
    }
}
