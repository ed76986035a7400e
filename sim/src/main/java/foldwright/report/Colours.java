// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Ground;
import foldwright.report.draw.Palette;
import foldwright.study.Verdict;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts the palette's colours into a style sheet that names their roles, e.g. {@code $ink2}. */
final class Colours {
    private static final Pattern ROLE = Pattern.compile("\\$(\\w+)");

    private Colours() {}

    static String fill(String css, Palette palette) {
        return ROLE.matcher(css)
                .replaceAll(m -> Matcher.quoteReplacement(hex(m.group(1), palette)));
    }

    private static String hex(String role, Palette palette) {
        String name = role.toUpperCase(Locale.ROOT);
        for (Verdict v : Verdict.values()) {
            if (v.name().equals(name)) {
                return palette.text(v).hex();
            }
        }
        return palette.ground(Ground.valueOf(name)).hex();
    }
}
