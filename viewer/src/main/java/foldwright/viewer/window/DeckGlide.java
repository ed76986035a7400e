// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

/** Takes the deck to a height of its own accord, gently, so that no picture jumps. */
final class DeckGlide {
    private static final double SECONDS = 0.6;

    private double from;
    private double to = Double.NaN;
    private double gone = 1;

    /** Sets out for a height, unless it is on its way there or has been there [m]. */
    void to(double height, double next) {
        if (next != to) {
            from = height;
            to = next;
            gone = 0;
        }
    }

    /** Stays where it is; forgets where it was going. */
    void stop() {
        to = Double.NaN;
        gone = 1;
    }

    boolean moves() {
        return gone < 1;
    }

    /** The height after some time [s], while it moves [m]. */
    double pass(double seconds) {
        gone = Math.min(1, gone + seconds / SECONDS);
        return gone == 1 ? to : from + gone * gone * (3 - 2 * gone) * (to - from);
    }
}
