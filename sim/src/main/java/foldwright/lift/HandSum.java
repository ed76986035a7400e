// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * One line of arithmetic a maker can repeat on paper: the formula, the same with the machine's own
 * numbers, and the result.
 *
 * <p>A hand sum is a check on the model, not the model: {@code validity} says what it leaves out.
 *
 * @param title what it answers, e.g. "Force at the feet without friction"
 * @param formula in symbols
 * @param filledIn the same with numbers and units, up to the equals sign of the result
 * @param value the result [SI]
 * @param shown the result as printed, with its unit
 * @param validity what it leaves out and where it may be used
 * @param source author, title, year, page or equation; or "own derivation"; empty where none is
 *     needed
 */
public record HandSum(
        String title,
        String formula,
        String filledIn,
        double value,
        String shown,
        String validity,
        String source) {
    public HandSum {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(filledIn, "filledIn");
        Objects.requireNonNull(shown, "shown");
        Objects.requireNonNull(validity, "validity");
        Objects.requireNonNull(source, "source");
    }

    /** The whole line: numbers and result. */
    public String worked() {
        return filledIn + " = " + shown;
    }

    /** A number to four significant digits, never in powers of ten, printed like all others. */
    static String number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return Double.isNaN(value) ? "undefined" : value > 0 ? "infinite" : "-infinite";
        }
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_EVEN));
        return Printed.given(Dimension.RATIO, rounded.doubleValue());
    }

    static String mm(double metres) {
        return number(metres * 1e3) + " mm";
    }

    static String newton(double force) {
        return number(force) + " N";
    }

    static String degrees(double radians) {
        return number(Math.toDegrees(radians)) + "°";
    }

    static String newtonMetre(double torque) {
        return number(torque) + " N·m";
    }
}
