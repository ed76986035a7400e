// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.PI;

/**
 * Lengths, box and feed time of the moves it is shown: what a toolpath is before anything moves.
 */
public final class PathSurvey {
    private final double[] low = {
        Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
    };
    private final double[] high = {
        Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
    };
    private final double[] end = new double[3];
    private final double[] point = new double[3];
    private double rapidLength;
    private double feedLength;
    private double clockwiseLength;
    private double counterclockwiseLength;
    private double feedTime;
    private double pauseTime;
    private long moves;

    /** Adds a move. */
    public void add(Move move) {
        moves++;
        for (int i = 0; i < 3; i++) {
            end[i] = move.end(i);
        }
        switch (move.kind()) {
            case PAUSE -> {
                pauseTime += move.pause();
                return;
            }
            case LINE -> {
                if (move.rate() == Move.Rate.RAPID) {
                    rapidLength += move.length();
                } else {
                    feedLength += move.length();
                    feedTime += move.length() / move.feed();
                }
            }
            case ARC -> {
                if (move.sweep() < 0) {
                    clockwiseLength += move.length();
                } else {
                    counterclockwiseLength += move.length();
                }
                feedTime += move.length() / move.feed();
                coverArc(move);
            }
        }
        cover(move, 0);
        cover(move, move.length());
    }

    /** The extreme points of an arc lie where its angle passes a quarter turn. */
    private void coverArc(Move move) {
        double quarter = PI / 2;
        double a0 = move.startAngle();
        double a1 = a0 + move.sweep();
        double from = Math.min(a0, a1);
        double to = Math.max(a0, a1);
        for (double k = Math.ceil(from / quarter); k * quarter <= to; k++) {
            cover(move, (k * quarter - a0) / move.sweep() * move.length());
        }
    }

    private void cover(Move move, double s) {
        move.point(s, point);
        for (int i = 0; i < 3; i++) {
            low[i] = Math.min(low[i], point[i]);
            high[i] = Math.max(high[i], point[i]);
        }
    }

    public long moves() {
        return moves;
    }

    /** Length of rapid moves [m]. */
    public double rapidLength() {
        return rapidLength;
    }

    /** Length of straight feed moves [m]. */
    public double feedLength() {
        return feedLength;
    }

    /** Length of clockwise arcs [m]. */
    public double clockwiseLength() {
        return clockwiseLength;
    }

    /** Length of counter-clockwise arcs [m]. */
    public double counterclockwiseLength() {
        return counterclockwiseLength;
    }

    /** Sum of length over feed, without any acceleration [s]. */
    public double feedTime() {
        return feedTime;
    }

    /** Sum of all pauses [s]. */
    public double pauseTime() {
        return pauseTime;
    }

    /** Smallest coordinate met along axis 0, 1 or 2 [m]; infinite before the first move. */
    public double low(int axis) {
        return low[axis];
    }

    /** Largest coordinate met along axis 0, 1 or 2 [m]. */
    public double high(int axis) {
        return high[axis];
    }

    /** Where the last move ended, along axis 0, 1 or 2 [m]. */
    public double end(int axis) {
        return end[axis];
    }
}
