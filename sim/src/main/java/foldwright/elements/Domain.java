// SPDX-License-Identifier: Apache-2.0
package foldwright.elements;

import java.util.Locale;

/**
 * Refuses a number outside the physical range of the law it enters; every message names the
 * quantity, what was found and what is allowed.
 */
public final class Domain {
    private Domain() {}

    /**
     * @param name the quantity, e.g. "pitch"
     * @param value its value in {@code unit}
     * @param unit SI unit for the message, "1" for pure numbers
     * @return {@code value}
     * @throws IllegalArgumentException unless the value is finite and above zero
     */
    public static double positive(String name, double value, String unit) {
        if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
            throw refusal(name, value, unit, "a finite value above 0");
        }
        return value;
    }

    /**
     * @return {@code value}
     * @throws IllegalArgumentException unless the value is finite and not below zero
     */
    public static double notNegative(String name, double value, String unit) {
        if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
            throw refusal(name, value, unit, "a finite value of at least 0");
        }
        return value;
    }

    /**
     * @return {@code value}
     * @throws IllegalArgumentException unless the value is finite
     */
    public static double finite(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refusal(name, value, unit, "a finite value");
        }
        return value;
    }

    /**
     * @param low smallest value allowed [unit]
     * @param high largest value allowed [unit]
     * @return {@code value}
     * @throws IllegalArgumentException unless {@code low <= value <= high}
     */
    public static double within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw refusal(name, value, unit, low + " to " + high);
        }
        return value;
    }

    /**
     * @return {@code value}
     * @throws IllegalArgumentException unless the value is at least {@code least}
     */
    public static int atLeast(String name, int value, int least) {
        if (value < least) {
            throw refusal(name, value, "1", "a whole number of at least " + least);
        }
        return value;
    }

    private static IllegalArgumentException refusal(
            String name, double value, String unit, String allowed) {
        return new IllegalArgumentException(
                String.format(Locale.ROOT, "%s is %s %s, allowed: %s", name, value, unit, allowed));
    }
}
