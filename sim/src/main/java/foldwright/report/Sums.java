// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import java.util.regex.Pattern;

/**
 * Sets plain text of a sum for print: units stay with their numbers, minus signs are minus signs.
 */
final class Sums {
    private static final Pattern UNIT =
            Pattern.compile(
                    "(\\d) (mm|m|N|N·m|N·m/rad|N/mm|J|W|Hz|MPa|GPa|kg|kg/m³|mm/s|m/s|m/s²|mrad|rev|rev/s|%|s)(?![\\w²³/·])");

    private static final Pattern PAIR = Pattern.compile("(\\d)-(\\d)");

    private Sums() {}

    static String set(String text) {
        return bound(text).replace(" - ", " \u2212 ");
    }

    /** Prose in which no line ends between a number and its unit. */
    static String bound(String text) {
        return UNIT.matcher(text).replaceAll("$1\u00a0$2");
    }

    /** A source in which no line ends within a pair of numbers such as 10-5. */
    static String source(String text) {
        return PAIR.matcher(bound(text)).replaceAll("$1-\u2060$2");
    }
}
