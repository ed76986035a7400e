// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A number with its unit as a person wrote it, e.g. {@code "240 mm"}.
 *
 * @param number the number written
 * @param unit the unit written
 */
public record Quantity(BigDecimal number, Unit unit) {
    /** Characters a quantity may have at most. */
    public static final int LONGEST = 80;

    private static final int LARGEST_POWER = 300;

    /** Checks that nothing is missing. */
    public Quantity {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(unit, "unit");
    }

    /** The value [SI]. */
    public double si() {
        return unit.toSi(number);
    }

    /**
     * Reads a number with a unit.
     *
     * @throws NotAQuantity saying what is wrong with the text
     */
    public static Quantity read(String text) throws NotAQuantity {
        String tidy = tidy(text);
        int end = endOfNumber(tidy);
        if (end == 0) {
            throw new NotAQuantity(NotAQuantity.Reason.NO_NUMBER, text, "");
        }
        String rest = tidy.substring(end).strip();
        BigDecimal number = number(tidy.substring(0, end), text);
        if (rest.startsWith(",") && rest.length() > 1 && Character.isDigit(rest.charAt(1))) {
            throw new NotAQuantity(NotAQuantity.Reason.DECIMAL_COMMA, text, "");
        }
        Optional<Unit> unit = Units.find(rest);
        if (unit.isEmpty()) {
            throw new NotAQuantity(NotAQuantity.Reason.UNKNOWN_UNIT, text, rest);
        }
        return new Quantity(number, unit.get());
    }

    /**
     * Reads a number with a unit of the given dimension and returns it [SI].
     *
     * @throws NotAQuantity saying what is wrong with the text
     */
    public static double read(String text, Dimension dimension) throws NotAQuantity {
        Quantity quantity = read(text);
        if (quantity.unit.measures(dimension)) {
            return quantity.si();
        }
        boolean bare = quantity.unit.text().equals("1");
        throw new NotAQuantity(
                bare ? NotAQuantity.Reason.NO_UNIT : NotAQuantity.Reason.WRONG_DIMENSION,
                text,
                quantity.unit.text());
    }

    /**
     * Reads a text of this program, such as a default.
     *
     * @throws IllegalArgumentException if it is no quantity of that dimension
     */
    public static double of(String text, Dimension dimension) {
        try {
            return read(text, dimension);
        } catch (NotAQuantity e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static String tidy(String text) throws NotAQuantity {
        if (text.length() > LONGEST) {
            throw new NotAQuantity(NotAQuantity.Reason.NO_NUMBER, text.substring(0, LONGEST), "");
        }
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean space = c == '\u00A0' || c == '\u202F' || c == '\u2009';
            out.append(space ? ' ' : c == '\u2212' ? '-' : c);
        }
        return out.toString().strip();
    }

    private static BigDecimal number(String digits, String text) throws NotAQuantity {
        try {
            BigDecimal number = new BigDecimal(digits);
            if (Math.abs((long) number.precision() - number.scale()) > LARGEST_POWER) {
                throw new NotAQuantity(NotAQuantity.Reason.TOO_LARGE, text, "");
            }
            return number;
        } catch (NumberFormatException e) {
            throw new NotAQuantity(NotAQuantity.Reason.NO_NUMBER, text, "");
        }
    }

    /** Where the leading number ends; an {@code e} belongs to it only before an exponent. */
    private static int endOfNumber(String text) {
        int at = 0;
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
            at++;
        }
        int digits = endOfDigits(text, at);
        int end = digits;
        if (end < text.length() && text.charAt(end) == '.') {
            end = endOfDigits(text, end + 1);
            digits = end - 1;
        }
        if (digits <= at) {
            return 0;
        }
        if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
            int sign = end + 1;
            if (sign < text.length() && (text.charAt(sign) == '-' || text.charAt(sign) == '+')) {
                sign++;
            }
            int exponent = endOfDigits(text, sign);
            end = exponent > sign ? exponent : end;
        }
        return end;
    }

    private static int endOfDigits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }
}
