// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Counts what a reader meets; words left out are told once each, with their count and first line.
 */
final class ReadTally {
    private final long[] letterCount = new long[26];
    private final long[] letterFirst = new long[26];
    private final Map<String, long[]> codes = new TreeMap<>();
    private long rapidLines;
    private long feedLines;
    private long clockwiseArcs;
    private long counterclockwiseArcs;
    private long pauses;
    private long roundedArcs;
    private double largestRounding;
    private long movesBeforeFeed;

    void straight(Move.Rate rate) {
        if (rate == Move.Rate.RAPID) {
            rapidLines++;
        } else {
            feedLines++;
        }
    }

    void arc(double sweep) {
        if (sweep < 0) {
            clockwiseArcs++;
        } else {
            counterclockwiseArcs++;
        }
    }

    void pause() {
        pauses++;
    }

    void moveBeforeFeed() {
        movesBeforeFeed++;
    }

    /** Notes an arc whose start and end radius differ by {@code gap} [m]. */
    void rounding(double gap) {
        if (gap > ArcCentre.TOLD) {
            roundedArcs++;
            largestRounding = Math.max(largestRounding, gap);
        }
    }

    ReadSummary summary(long lines) {
        return new ReadSummary(
                lines,
                rapidLines,
                feedLines,
                clockwiseArcs,
                counterclockwiseArcs,
                pauses,
                skipped(),
                roundedArcs,
                largestRounding,
                movesBeforeFeed);
    }

    /** Counts the letters of a bit set, bit 0 for A. */
    void skippedLetters(int set, long line) {
        int rest = set;
        while (rest != 0) {
            int i = Integer.numberOfTrailingZeros(rest);
            rest &= rest - 1;
            if (letterCount[i]++ == 0) {
                letterFirst[i] = line;
            }
        }
    }

    void skippedCode(char letter, int tenths, long line) {
        codes.computeIfAbsent(Codes.name(letter, tenths), name -> new long[] {0, line})[0]++;
    }

    /** Codes first, then letters, each in alphabetical order. */
    private List<ReadSummary.Skipped> skipped() {
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
