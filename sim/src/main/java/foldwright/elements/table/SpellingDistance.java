// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.table;

/**
 * How differently two names are written: the least number of inserted, dropped, changed or swapped
 * neighbouring letters (optimal string alignment; Damerau, Comm. ACM 7 (1964) 171), where the part
 * of a longer name that the asked one leaves out counts a quarter, so "PLA" is near "PLA, printed".
 */
final class SpellingDistance {
    private static final double OMITTED_TAIL = 0.25;

    private SpellingDistance() {}

    /**
     * @param asked what somebody wrote
     * @param name what the table holds
     * @return 0 for equal spelling
     */
    static double between(String asked, String name) {
        int[][] d = alignment(asked, name);
        int n = asked.length();
        double best = d[n][name.length()];
        for (int j = 0; j < name.length(); j++) {
            best = Math.min(best, d[n][j] + OMITTED_TAIL * (name.length() - j));
        }
        return best;
    }

    private static int[][] alignment(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least =
                        Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                boolean swapped =
                        i > 1
                                && j > 1
                                && a.charAt(i - 1) == b.charAt(j - 2)
                                && a.charAt(i - 2) == b.charAt(j - 1);
                d[i][j] = swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
            }
        }
        return d;
    }
}
