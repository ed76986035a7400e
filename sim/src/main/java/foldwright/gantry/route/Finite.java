// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.Locale;

/** Refuses numbers a description cannot hold. */
final class Finite {
    private Finite() {}

    static void check(String owner, String key, double value) {
        if (!Double.isFinite(value)) {
            throw refusal(owner, key, value, "a finite number");
        }
    }

    static void checkPositive(String owner, String key, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw refusal(owner, key, value, "a finite number above 0");
        }
    }

    static void checkNotNegative(String owner, String key, double value) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw refusal(owner, key, value, "a finite number of 0 or more");
        }
    }

    private static IllegalArgumentException refusal(
            String owner, String key, double value, String allowed) {
        return new IllegalArgumentException(
                String.format(
                        Locale.ROOT, "%s: %s is %s; allowed: %s", owner, key, value, allowed));
    }
}
