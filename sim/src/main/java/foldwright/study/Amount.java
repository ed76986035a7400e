// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Objects;

/**
 * A value and the unit in which it is shown.
 *
 * @param si the value [SI]
 * @param unit unit for a reader
 */
public record Amount(double si, Shown unit) {
    public Amount {
        Objects.requireNonNull(unit, "unit");
    }

    public static Amount of(double si, Shown unit) {
        return new Amount(si, unit);
    }

    /** The value in its own unit. */
    public double value() {
        return unit.fromSi(si);
    }

    /** As printed, e.g. "0.140 N·m". */
    public String text() {
        return Numerals.with(si, unit);
    }
}
