// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.Locale;

/** Refuses numbers a description cannot hold. */
final class Checks {
    private Checks() {}

    static void positive(String key, double value) {
        if (!(value > 0)) {
            throw refusal(key, value, "above 0");
        }
    }

    static void notNegative(String key, double value) {
        if (!(value >= 0)) {
            throw refusal(key, value, "0 or more");
        }
    }

    static void finite(String key, double value) {
        if (!Double.isFinite(value)) {
            throw refusal(key, value, "a finite number");
        }
    }

    private static IllegalArgumentException refusal(String key, double value, String allowed) {
        return new IllegalArgumentException(
                String.format(Locale.ROOT, "%s is %s; allowed: %s", key, value, allowed));
    }
}
