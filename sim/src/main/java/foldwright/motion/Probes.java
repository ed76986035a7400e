// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * Built-in probe moves: short toolpaths that show one fault at a time. All start and end at rest.
 */
public final class Probes {
    private Probes() {}

    /** A square around a centre, from its lower left corner, counter-clockwise [m, m/s]. */
    public static MoveSource square(double centreX, double centreY, double side, double feed) {
        double r = side / 2;
        Builder b = new Builder(centreX - r, centreY - r);
        b.line(centreX + r, centreY - r, feed);
        b.line(centreX + r, centreY + r, feed);
        b.line(centreX - r, centreY + r, feed);
        b.line(centreX - r, centreY - r, feed);
        return b.source();
    }

    /** A full circle around a centre, from its right side, counter-clockwise [m, m/s]. */
    public static MoveSource circle(double centreX, double centreY, double radius, double feed) {
        Builder b = new Builder(centreX + radius, centreY);
        b.circle(centreX, centreY, feed);
        return b.source();
    }

    /** A zig-zag that fills a square with parallel strokes along X [m, m/s]. */
    public static MoveSource zigZag(
            double centreX, double centreY, double side, int strokes, double feed) {
        double r = side / 2;
        double step = side / Math.max(1, strokes - 1);
        Builder b = new Builder(centreX - r, centreY - r);
        for (int i = 0; i < strokes; i++) {
            double y = centreY - r + i * step;
            b.line(i % 2 == 0 ? centreX + r : centreX - r, y, feed);
            if (i + 1 < strokes) {
                b.line(i % 2 == 0 ? centreX + r : centreX - r, y + step, feed);
            }
        }
        return b.source();
    }

    /** The axis that {@link #backAndForth} moves along. */
    public enum Along {
        X,
        Y
    }

    /**
     * Back and forth over one stroke, each time with more acceleration.
     *
     * @param stroke length of a stroke, centred [m]
     * @param feed speed limit [m/s]
     * @param first acceleration of the first stroke [m/s2]
     * @param last acceleration of the last stroke [m/s2]
     * @param strokes how many, at least 2
     */
    public static MoveSource backAndForth(
            Along along, double stroke, double feed, double first, double last, int strokes) {
        return backAndForthAt(
                along, new double[] {0, 0}, stroke, feed, new double[] {first, last}, strokes);
    }

    /** As {@link #backAndForth}, around a centre [m], between two accelerations [m/s2]. */
    public static MoveSource backAndForthAt(
            Along along,
            double[] centre,
            double stroke,
            double feed,
            double[] accelerations,
            int strokes) {
        double dx = along == Along.X ? stroke / 2 : 0;
        double dy = along == Along.Y ? stroke / 2 : 0;
        Builder b = new Builder(centre[0] - dx, centre[1] - dy);
        for (int i = 0; i < strokes; i++) {
            double sign = i % 2 == 0 ? 1 : -1;
            double share = strokes > 1 ? i / (double) (strokes - 1) : 0;
            b.line(centre[0] + sign * dx, centre[1] + sign * dy, feed);
            b.limit(accelerations[0] + share * (accelerations[1] - accelerations[0]));
        }
        return b.source();
    }

    private static final class Builder {
        private final List<Move> moves = new ArrayList<>();
        private final double[] at = new double[3];

        Builder(double x, double y) {
            at[0] = x;
            at[1] = y;
        }

        void line(double x, double y, double feed) {
            Move move = new Move();
            move.setLine(at, new double[] {x, y, 0}, Move.Rate.FEED, feed, moves.size() + 1L);
            at[0] = x;
            at[1] = y;
            moves.add(move);
        }

        void circle(double cx, double cy, double feed) {
            Move move = new Move();
            move.setArc(
                    at, at, Plane.XY, new double[] {cx, cy}, 2 * Math.PI, feed, moves.size() + 1L);
            moves.add(move);
        }

        void limit(double acceleration) {
            moves.get(moves.size() - 1).limitAcceleration(acceleration);
        }

        MoveSource source() {
            var iterator = moves.iterator();
            return out -> {
                if (!iterator.hasNext()) {
                    return false;
                }
                out.copyFrom(iterator.next());
                return true;
            };
        }
    }
}
