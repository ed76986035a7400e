// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.study.Numerals;

/** Numbers at the ticks of an axis. */
final class Ticks {
    private Ticks() {}

    /** The tick with the decimals of its axis; zero is a plain 0. */
    static String text(double tick, int decimals) {
        return Math.abs(tick) < 1e-12 ? "0" : Numerals.fixed(tick, decimals);
    }
}
