// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Counts the words that were read and left out, so that each is told once, with its count and first
 * line.
 */
final class SkippedWords {
    private final long[] letterCount = new long[26];
    private final long[] letterFirst = new long[26];
    private final Map<String, long[]> codes = new TreeMap<>();

    /** Counts the letters of a bit set, bit 0 for A. */
    void letters(int set, long line) {
        int rest = set;
        while (rest != 0) {
            int i = Integer.numberOfTrailingZeros(rest);
            rest &= rest - 1;
            if (letterCount[i]++ == 0) {
                letterFirst[i] = line;
            }
        }
    }

    void code(char letter, int tenths, long line) {
        codes.computeIfAbsent(Codes.name(letter, tenths), name -> new long[] {0, line})[0]++;
    }

    /** Codes first, then letters, each in alphabetical order. */
    List<ReadSummary.Skipped> list() {
        List<ReadSummary.Skipped> all = new ArrayList<>();
        codes.forEach((name, seen) -> all.add(new ReadSummary.Skipped(name, seen[0], seen[1])));
        for (int i = 0; i < 26; i++) {
            if (letterCount[i] > 0) {
                all.add(
                        new ReadSummary.Skipped(
                                "" + (char) ('A' + i), letterCount[i], letterFirst[i]));
            }
        }
        return all;
    }
}
