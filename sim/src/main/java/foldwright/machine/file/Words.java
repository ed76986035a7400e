// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Words of messages: quoting, listing, and the nearest of some known words. */
final class Words {
    private static final int LONGEST = 60;

    private Words() {}

    /** A text in quotes, cut where it is long, with control characters made visible. */
    static String quoted(String text) {
        return '"' + shortened(text) + '"';
    }

    /** A text cut where it is long, with control characters made visible. */
    static String shortened(String text) {
        int end = Math.min(text.length(), LONGEST);
        if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || c == '\uFEFF') {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return end < text.length() ? out.append('…').toString() : out.toString();
    }

    /** The known word nearest to a text, if it is near enough to be meant. */
    static Optional<String> nearest(String text, Collection<String> known) {
        String wanted = fold(text);
        int best = Math.max(1, Math.min(4, wanted.length() / 3)) + 1;
        String found = null;
        if (wanted.length() <= LONGEST) {
            for (String candidate : known) {
                int distance = distance(wanted, fold(candidate));
                if (distance < best) {
                    best = distance;
                    found = candidate;
                }
            }
        }
        return Optional.ofNullable(found);
    }

    private static String fold(String text) {
        return text.toLowerCase(Locale.ROOT).replace("_", "").replace("-", "").replace(" ", "");
    }

    /** Edit distance with swaps of neighbours (optimal string alignment). */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int best = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
                best = Math.min(best, cost[i - 1][j - 1] + change);
                if (i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1)) {
                    best = Math.min(best, cost[i - 2][j - 2] + 1);
                }
                cost[i][j] = best;
            }
        }
        return cost[a.length()][b.length()];
    }
}
