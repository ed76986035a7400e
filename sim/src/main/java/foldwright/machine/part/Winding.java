// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * Electrical data from which the pull-out curve is computed.
 *
 * @param resistance resistance of one phase [Ω]
 * @param inductance inductance of one phase [H]
 * @param current current of one phase set at the driver [A]
 * @param supplyVoltage supply voltage of the driver [V]
 */
@Kind(value = "Electrical data from which the pull-out curve is computed.", word = "winding")
public record Winding(
        @Key(
                        value = "Resistance of one phase",
                        is = Dimension.RESISTANCE,
                        range = "(0 ohm, 1000 ohm]",
                        example = "1.65 ohm")
                double resistance,
        @Key(
                        value = "Inductance of one phase",
                        is = Dimension.INDUCTANCE,
                        range = "(0 mH, 10 H]",
                        example = "3.2 mH")
                double inductance,
        @Key(
                        value = "Current of one phase set at the driver",
                        is = Dimension.CURRENT,
                        range = "(0 A, 50 A]",
                        example = "1.5 A")
                double current,
        @Key(
                        value = "Supply voltage of the driver",
                        is = Dimension.VOLTAGE,
                        range = "(0 V, 400 V]",
                        example = "24 V")
                double supplyVoltage)
        implements PullOut {
    /** Checks every value against its key. */
    public Winding {
        Keys.check(Winding.class, resistance, inductance, current, supplyVoltage);
    }
}
