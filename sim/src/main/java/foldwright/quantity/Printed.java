// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Numbers as a person reads them, one way for terminal, report and viewer and in every locale.
 *
 * <p>Three significant digits but never fewer than the whole number; a thin space between groups of
 * three from four digits on; a true minus; a point as decimal sign; a no-break space before the
 * unit; no powers of ten, the prefix of the unit changes instead.
 */
public final class Printed {
    /** What stands for a value that is not known. */
    public static final String NOT_GIVEN = "not given";

    /** What stands for the margin where nothing is asked for. */
    public static final String NOTHING_NEEDED = "nothing needed";

    private static final char NARROW = '\u202F';
    private static final char NO_BREAK = '\u00A0';
    private static final char MINUS = '\u2212';
    private static final char TIMES = '\u00D7';
    private static final int SIGNIFICANT = 3;
    private static final int MOST_DECIMALS = 9;
    private static final double[] VERDICT_LIMITS = {1.0, 1.5};

    private Printed() {}

    /** A pure number with three significant digits. */
    public static String number(double value) {
        return number(value, decimalsFor(value));
    }

    /** A pure number with a fixed number of decimals. */
    public static String number(double value, int decimals) {
        if (Double.isNaN(value)) {
            return NOT_GIVEN;
        }
        if (Double.isInfinite(value)) {
            return (value < 0 ? String.valueOf(MINUS) : "") + "unlimited";
        }
        long digits = PlainDigits.scaled(value, decimals);
        if (digits != PlainDigits.IN_DOUBT) {
            return PlainDigits.print(digits, decimals, value, new StringBuilder(12)).toString();
        }
        return grouped(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /**
     * A value in a given unit, three significant digits.
     *
     * @param si the value [SI]
     * @param unit the unit to print, e.g. {@code "N·m"}
     */
    public static String in(String unit, double si) {
        Unit known = Units.of(unit);
        double near = si / known.size();
        int usual = PlainDigits.decimals(near);
        if (usual != PlainDigits.IN_DOUBT) {
            int decimals = coarse(known, usual);
            long digits = PlainDigits.scaled(near, decimals);
            if (digits != PlainDigits.IN_DOUBT) {
                StringBuilder out = new StringBuilder(24);
                return suffix(known.text(), PlainDigits.print(digits, decimals, near, out))
                        .toString();
            }
        }
        double value = known.fromSi(si);
        return in(known, value, coarse(known, decimalsFor(value)));
    }

    /** Lengths are never finer than 0.001 mm. */
    private static int coarse(Unit unit, int decimals) {
        if (!unit.measures(Dimension.LENGTH)) {
            return decimals;
        }
        int finest = (int) Math.round(6 + Math.log10(unit.size()));
        return Math.max(0, Math.min(decimals, finest));
    }

    /**
     * A value in a given unit with a fixed number of decimals.
     *
     * @param si the value [SI]
     * @param unit the unit to print, e.g. {@code "mm"}
     */
    public static String in(String unit, double si, int decimals) {
        Unit known = Units.of(unit);
        return in(known, known.fromSi(si), decimals);
    }

    /**
     * A value in the unit its size asks for, e.g. {@code 0.000012 N} as 12 µN.
     *
     * @param si the value [SI]
     */
    public static String of(Dimension dimension, double si) {
        return in(unitFor(dimension, si), si);
    }

    /** As {@link #of}, without the zeros that end a decimal fraction: for values as given. */
    public static String given(Dimension dimension, double si) {
        String unit = unitFor(dimension, si);
        double value = Units.of(unit).fromSi(si);
        if (!Double.isFinite(value)) {
            return number(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new java.math.MathContext(6));
        rounded = rounded.stripTrailingZeros();
        return grouped(rounded.scale() < 0 ? rounded.setScale(0) : rounded) + suffix(unit);
    }

    /** A margin with the usual verdict limits 1 and 1.5; see {@link #margin(double, double...)}. */
    public static String margin(double margin) {
        return margin(margin, VERDICT_LIMITS);
    }

    /**
     * A margin, e.g. {@code 1.34×}: two decimals below 10, one below 100. Its rounding never
     * crosses a limit: with the limit 1.5, 1.4996 is printed as 1.49×.
     *
     * @param margin available over required [1]
     * @param limits margins at which a verdict changes
     */
    public static String margin(double margin, double... limits) {
        if (Double.isNaN(margin)) {
            return NOT_GIVEN;
        }
        if (margin == Double.POSITIVE_INFINITY) {
            return NOTHING_NEEDED;
        }
        if (margin >= 100) {
            return ">100" + TIMES;
        }
        if (margin == Double.NEGATIVE_INFINITY) {
            return MINUS + "unlimited";
        }
        BigDecimal exact = new BigDecimal(margin);
        int decimals =
                Math.abs(exact.setScale(2, RoundingMode.HALF_EVEN).doubleValue()) < 10 ? 2 : 1;
        BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_EVEN);
        if (crosses(margin, rounded.doubleValue(), limits)) {
            boolean up = rounded.compareTo(exact) > 0;
            rounded = exact.setScale(decimals, up ? RoundingMode.FLOOR : RoundingMode.CEILING);
        }
        return grouped(rounded) + TIMES;
    }

    private static boolean crosses(double exact, double rounded, double... limits) {
        boolean crossed = exact < 100 && rounded >= 100;
        for (double limit : limits) {
            crossed |= exact < limit != rounded < limit;
        }
        return crossed;
    }

    /** The unit whose prefix fits the size of a value. */
    public static String unitFor(Dimension dimension, double si) {
        List<String> ladder = Ladder.of(dimension);
        double size = Math.abs(si);
        if (size == 0 || Units.of(ladder.get(0)).fromSi(size) >= Ladder.SMALLEST) {
            return ladder.get(0);
        }
        return ladder.stream()
                .skip(1)
                .filter(unit -> Units.of(unit).fromSi(size) >= 1)
                .findFirst()
                .orElse(ladder.get(ladder.size() - 1));
    }

    private static String in(Unit unit, double value, int decimals) {
        String text = number(value, decimals);
        return Double.isNaN(value) ? text : text + suffix(unit.text());
    }

    private static String suffix(String unit) {
        return suffix(unit, new StringBuilder()).toString();
    }

    private static StringBuilder suffix(String unit, StringBuilder out) {
        return switch (unit) {
            case "1" -> out;
            case "°" -> out.append(unit);
            default -> out.append(NO_BREAK).append(unit);
        };
    }

    private static int decimalsFor(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return 0;
        }
        int plain = PlainDigits.decimals(value);
        if (plain != PlainDigits.IN_DOUBT) {
            return plain;
        }
        // 9.996 has one digit before the point but prints as 10.0
        BigDecimal rounded = new BigDecimal(value).round(new java.math.MathContext(SIGNIFICANT));
        int whole = rounded.precision() - rounded.scale();
        return Math.max(0, Math.min(MOST_DECIMALS, SIGNIFICANT - whole));
    }

    private static String grouped(BigDecimal value) {
        String plain = value.abs().toPlainString();
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder out = new StringBuilder(value.signum() < 0 ? String.valueOf(MINUS) : "");
        for (int i = 0; i < point; i++) {
            if (i > 0 && (point - i) % 3 == 0) {
                out.append(NARROW);
            }
            out.append(plain.charAt(i));
        }
        return out.append(plain, point, plain.length()).toString();
    }
}
