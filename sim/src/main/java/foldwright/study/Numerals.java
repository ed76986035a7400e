// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as a person reads them: three significant digits, a thin space from four digits, a true
 * minus, a point as decimal sign in every locale, no powers of ten.
 */
public final class Numerals {
    private static final char THIN_SPACE = '\u202f';
    private static final char MINUS = '\u2212';

    private Numerals() {}

    /** The value with its unit, three significant digits. */
    public static String with(double si, Shown unit) {
        return number(si, unit) + (Double.isFinite(si) ? unit.gap() + unit.symbol() : "");
    }

    /** The value in the unit, without the symbol. */
    public static String number(double si, Shown unit) {
        double value = unit.fromSi(si);
        return switch (unit) {
            case TIMES -> marginNumber(value);
            case COUNT -> fixed(value, 0);
            case MILLIMETRE -> significant(value, 3, 3);
            default -> significant(value, 3, 6);
        };
    }

    /** The value in the unit with the given decimals, for columns and ticks. */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return infinite(value);
        }
        return dressed(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /**
     * A number to so many significant digits, whole digits never cut ("2 388"), and at most so many
     * decimals.
     */
    public static String significant(double value, int digits, int mostDecimals) {
        if (!Double.isFinite(value)) {
            return infinite(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int decimals = Math.max(0, digits - (rounded.precision() - rounded.scale()));
        return dressed(
                BigDecimal.valueOf(value)
                        .setScale(Math.min(decimals, mostDecimals), RoundingMode.HALF_EVEN));
    }

    /**
     * A margin: two decimals below 10, one below 100, then {@code >100×}. Rounded down, so that it
     * never crosses a limit of a verdict (1.4996 prints 1.49×).
     */
    public static String margin(double margin) {
        if (Double.isNaN(margin)) {
            return "unknown";
        }
        if (margin == Double.POSITIVE_INFINITY) {
            return "no load here";
        }
        return marginNumber(margin) + "×";
    }

    private static String marginNumber(double margin) {
        if (Double.isNaN(margin)) {
            return "unknown";
        }
        if (margin >= 100) {
            return ">100";
        }
        // 1e-12: a margin of 2 that arrives as 1.9999999999999998 is 2.
        int decimals = margin >= 10 ? 1 : 2;
        double guarded = margin + 1e-12 * Math.max(1, Math.abs(margin));
        return dressed(BigDecimal.valueOf(guarded).setScale(decimals, RoundingMode.FLOOR));
    }

    private static String infinite(double value) {
        if (Double.isNaN(value)) {
            return "unknown";
        }
        return value > 0 ? "no limit" : MINUS + "no limit";
    }

    private static String dressed(BigDecimal value) {
        String plain = value.abs().toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        StringBuilder out = new StringBuilder();
        if (value.signum() < 0) {
            out.append(MINUS);
        }
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0) {
                out.append(THIN_SPACE);
            }
            out.append(whole.charAt(i));
        }
        return out.append(point < 0 ? "" : plain.substring(point)).toString();
    }
}
