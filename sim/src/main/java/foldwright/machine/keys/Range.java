// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import foldwright.quantity.Dimension;
import foldwright.quantity.Quantity;

/**
 * An interval of allowed values with the text it was written as.
 *
 * @param low lower end [SI]
 * @param lowIn whether the lower end itself is allowed
 * @param high upper end [SI]
 * @param highIn whether the upper end itself is allowed
 * @param lowText lower end as written
 * @param highText upper end as written
 */
public record Range(
        double low, boolean lowIn, double high, boolean highIn, String lowText, String highText) {

    /** Every finite number. */
    public static final Range ALL =
            new Range(-Double.MAX_VALUE, true, Double.MAX_VALUE, true, "", "");

    /** Reads {@code "(0 mm, 5 m]"}; an empty text is {@link #ALL}. */
    public static Range of(String text, Dimension dimension) {
        if (text.isEmpty()) {
            return ALL;
        }
        int comma = text.indexOf(',');
        String low = text.substring(1, comma).strip();
        String high = text.substring(comma + 1, text.length() - 1).strip();
        return new Range(
                Quantity.of(low, dimension),
                text.charAt(0) == '[',
                Quantity.of(high, dimension),
                text.endsWith("]"),
                low,
                high);
    }

    /** Whether a value is allowed; a value that is not a number never is. */
    public boolean holds(double value) {
        boolean above = lowIn ? value >= low : value > low;
        return above && (highIn ? value <= high : value < high);
    }

    /** The interval in words, e.g. {@code more than 0 mm, at most 5 m}. */
    public String words() {
        if (this.equals(ALL)) {
            return "any number";
        }
        return (lowIn ? lowText : "more than " + lowText)
                + (lowIn
                        ? (highIn ? " to " : " to less than ")
                        : (highIn ? ", at most " : ", less than "))
                + highText;
    }
}
