// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import java.util.regex.Pattern;

/**
 * Sets plain text of a sum for print: units stay with their numbers, minus signs are minus signs.
 */
final class Sums {
    private static final Pattern UNIT =
            Pattern.compile("(\\d) (mm|N|N·m|N/mm|J|MPa|kg|m/s|rev|%|s)(?![\\w²])");

    private Sums() {}

    static String set(String text) {
        return UNIT.matcher(text).replaceAll("$1\u00a0$2").replace(" - ", " \u2212 ");
    }
}
