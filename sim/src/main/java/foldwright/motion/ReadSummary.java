// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.List;

/**
 * What a reader met up to now.
 *
 * @param lines lines read
 * @param rapidLines straight rapid moves, moves of no length not counted
 * @param feedLines straight feed moves
 * @param clockwiseArcs arcs of G2
 * @param counterclockwiseArcs arcs of G3
 * @param pauses dwells and stops
 * @param skipped words left out, each once
 * @param roundedArcs arcs whose start and end radius differ by more than 0.002 mm; the radius is
 *     blended along them
 * @param largestRounding largest such difference [m]
 * @param movesBeforeFeed feed moves that came before any F word and took the fallback feed
 */
public record ReadSummary(
        long lines,
        long rapidLines,
        long feedLines,
        long clockwiseArcs,
        long counterclockwiseArcs,
        long pauses,
        List<Skipped> skipped,
        long roundedArcs,
        double largestRounding,
        long movesBeforeFeed) {

    /**
     * A word that was read and left out.
     *
     * @param word the code ("M106") or letter ("E")
     * @param count how often
     * @param firstLine 1-based line where it came first
     */
    public record Skipped(String word, long count, long firstLine) {}

    public ReadSummary {
        skipped = List.copyOf(skipped);
    }
}
