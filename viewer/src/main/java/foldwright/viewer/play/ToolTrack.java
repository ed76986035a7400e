// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import foldwright.run.Run;
import foldwright.run.RunColumn;
import foldwright.run.RunTable;
import foldwright.viewer.sheet.Playing;
import java.util.ArrayList;
import java.util.List;

/** A replay seen along its path: the way at every row, corners, errors in even pieces. */
final class ToolTrack {
    /** Pieces of the way for the plot. */
    private static final int PIECES = 600;

    /** Points of the track on the table, about. */
    private static final int POINTS = 4000;

    /** Corners that get a number. */
    private static final int MOST_CORNERS = 40;

    /** Turns of the path that count as corners [rad]. */
    private static final double TURN = Math.toRadians(15);

    /** Over this way a direction is measured [m]. */
    private static final double CHORD = 1e-3;

    /** The most the bridge is turned in a picture [rad]. */
    private static final double MOST_TURN = 0.25;

    private final RunTable table;
    private final double toolX;
    private final double toolY;
    private final double toolZ;
    private final double allowed;
    private final double[] way;
    private final double end;
    private final List<Playing.Corner> corners = new ArrayList<>();
    private final double[] lowSkew = new double[PIECES];
    private final double[] highSkew = new double[PIECES];
    private final double[] lowX = new double[PIECES];
    private final double[] highX = new double[PIECES];
    private final double[] lowY = new double[PIECES];
    private final double[] highY = new double[PIECES];
    private final double[] margin = new double[PIECES];
    private final double allowedSkew;
    private final double span;
    private final double largest;
    private final double largestAt;
    private final int stride;
    private final float[] trackX;
    private final float[] trackY;
    private final float[] trackErrorX;
    private final float[] trackErrorY;

    ToolTrack(Run run) {
        table = run.table();
        Machine machine = run.machine().machine();
        Gantry gantry = machine.gantry().orElseThrow();
        toolX = gantry.carriage().toolPoint().x();
        toolY = gantry.carriage().toolPoint().y();
        toolZ = gantry.carriage().toolPoint().z();
        allowed = machine.limits().toolError().orElse(Double.NaN);
        span = gantry.legs().span();
        allowedSkew = machine.limits().skew().orElse(Double.NaN) / span;
        way = new double[table.rows()];
        for (int r = 1; r < way.length; r++) {
            way[r] =
                    way[r - 1]
                            + Math.hypot(
                                    commandX(r) - commandX(r - 1), commandY(r) - commandY(r - 1));
        }
        end = Math.max(1e-6, way[way.length - 1]);
        pieces();
        int worst = largestIn(0, way.length);
        largest = error(worst);
        largestAt = way[worst];
        findCorners();
        stride = Math.max(1, way.length / POINTS);
        int n = (way.length + stride - 1) / stride;
        trackX = new float[n];
        trackY = new float[n];
        trackErrorX = new float[n];
        trackErrorY = new float[n];
        for (int i = 0; i < n; i++) {
            int r = largestIn(i * stride, Math.min(way.length, (i + 1) * stride));
            trackX[i] = (float) commandX(r);
            trackY[i] = (float) commandY(r);
            trackErrorX[i] = (float) table.at(RunColumn.ERROR_X, r);
            trackErrorY[i] = (float) table.at(RunColumn.ERROR_Y, r);
        }
    }

    private double commandX(int row) {
        return table.at(RunColumn.COMMANDED_X, row) + toolX;
    }

    private double commandY(int row) {
        return table.at(RunColumn.COMMANDED_Y, row) + toolY;
    }

    private double error(int row) {
        return Math.hypot(table.at(RunColumn.ERROR_X, row), table.at(RunColumn.ERROR_Y, row));
    }

    private int largestIn(int from, int to) {
        int worst = from;
        for (int r = from; r < to; r++) {
            worst = error(r) > error(worst) ? r : worst;
        }
        return worst;
    }

    private void pieces() {
        java.util.Arrays.fill(lowSkew, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(highSkew, Double.NEGATIVE_INFINITY);
        java.util.Arrays.fill(lowX, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(highX, Double.NEGATIVE_INFINITY);
        java.util.Arrays.fill(lowY, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(highY, Double.NEGATIVE_INFINITY);
        java.util.Arrays.fill(margin, Double.POSITIVE_INFINITY);
        int last = 0;
        for (int r = 0; r < way.length; r++) {
            int p = (int) Math.min(PIECES - 1, way[r] / end * PIECES);
            for (int i = Math.min(last + 1, p); i <= p; i++) {
                add(i, r);
            }
            last = p;
        }
    }

    private void add(int piece, int row) {
        double ex = table.at(RunColumn.ERROR_X, row);
        double ey = table.at(RunColumn.ERROR_Y, row);
        double skew = span * table.at(RunColumn.SKEW, row);
        lowSkew[piece] = Math.min(lowSkew[piece], skew);
        highSkew[piece] = Math.max(highSkew[piece], skew);
        lowX[piece] = Math.min(lowX[piece], ex);
        highX[piece] = Math.max(highX[piece], ex);
        lowY[piece] = Math.min(lowY[piece], ey);
        highY[piece] = Math.max(highY[piece], ey);
        double byError = allowed / Math.max(1e-12, Math.hypot(ex, ey));
        double bySkew = allowedSkew / Math.max(1e-15, Math.abs(table.at(RunColumn.SKEW, row)));
        // Where one is not limited the other decides.
        double here =
                Double.isNaN(byError)
                        ? bySkew
                        : Double.isNaN(bySkew) ? byError : Math.min(byError, bySkew);
        margin[piece] = Double.isNaN(here) ? here : Math.min(margin[piece], Math.min(100, here));
    }

    private void findCorners() {
        corner(0);
        int row = 1;
        while (row < way.length) {
            boolean change = table.at(RunColumn.LINE, row) != table.at(RunColumn.LINE, row - 1);
            if (change && turn(row) > TURN && corners.size() < MOST_CORNERS) {
                corner(row);
            }
            row++;
        }
    }

    private void corner(int row) {
        int last = corners.size() - 1;
        if (last >= 0 && way[row] - corners.get(last).way() < CHORD) {
            return;
        }
        corners.add(new Playing.Corner(corners.size() + 1, way[row], commandX(row), commandY(row)));
    }

    /** By how much the path turns at a row [rad]. */
    private double turn(int row) {
        int before = row;
        while (before > 0 && way[row] - way[before] < CHORD) {
            before--;
        }
        int after = row;
        while (after < way.length - 1 && way[after] - way[row] < CHORD) {
            after++;
        }
        if (way[row] == way[before] || way[after] == way[row]) {
            return 0;
        }
        double a = Math.atan2(commandY(row) - commandY(before), commandX(row) - commandX(before));
        double b = Math.atan2(commandY(after) - commandY(row), commandX(after) - commandX(row));
        double turned = Math.abs(a - b);
        return Math.min(turned, 2 * Math.PI - turned);
    }

    /** Place along the path at a time [m]. */
    double wayAt(double time) {
        int r = table.row(time);
        if (r + 1 >= way.length || time <= table.time(r)) {
            return way[r];
        }
        double share = (time - table.time(r)) / (table.time(r + 1) - table.time(r));
        return way[r] + share * (way[r + 1] - way[r]);
    }

    /** The first time at which the path has come so far [s]. */
    double timeAt(double place) {
        int low = 0;
        int high = way.length - 1;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (way[mid] >= place) {
                high = mid;
            } else {
                low = mid + 1;
            }
        }
        if (low == 0 || way[low] == way[low - 1]) {
            return table.time(low);
        }
        double share = Math.min(1, (place - way[low - 1]) / (way[low] - way[low - 1]));
        return table.time(low - 1) + share * (table.time(low) - table.time(low - 1));
    }

    double end() {
        return end;
    }

    /** Largest error of the tool [m]. */
    double largest() {
        return largest;
    }

    /** Where along the path that is [m]. */
    double largestAt() {
        return largestAt;
    }

    double allowed() {
        return allowed;
    }

    /** The largest of 1, 2, 5, 10 ... 1000 that keeps bridge and track within the picture. */
    double fitting() {
        double turn = Math.max(1e-12, table.largest(RunColumn.SKEW));
        double stray = 0.12 * extent() / Math.max(1e-12, largest);
        double factor = 1;
        for (double next : new double[] {2, 5, 10, 20, 50, 100, 200, 500, 1000}) {
            factor = next * turn <= MOST_TURN && next <= stray ? next : factor;
        }
        return factor;
    }

    private double extent() {
        double lx = Double.POSITIVE_INFINITY;
        double hx = Double.NEGATIVE_INFINITY;
        double ly = Double.POSITIVE_INFINITY;
        double hy = Double.NEGATIVE_INFINITY;
        for (int r = 0; r < way.length; r++) {
            lx = Math.min(lx, commandX(r));
            hx = Math.max(hx, commandX(r));
            ly = Math.min(ly, commandY(r));
            hy = Math.max(hy, commandY(r));
        }
        return Math.max(hx - lx, hy - ly);
    }

    /** A round end of the ink's scale [m]. */
    double inkEnd() {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1e-9, largest))));
        for (double f : new double[] {1, 1.5, 2, 3, 4, 5, 6, 8, 10}) {
            if (f * power >= largest * (1 - 1e-9)) {
                return f * power;
            }
        }
        return 10 * power;
    }

    private static double orZero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    /** What the sheet shows at a time, errors drawn larger by a factor, with notes below it. */
    Playing.Way sheet(double time, double larger, List<String> notes) {
        double reach =
                Math.max(
                        Math.max(largest, span * table.largest(RunColumn.SKEW)),
                        1.25 * Math.max(orZero(allowed), orZero(span * allowedSkew)));
        Playing.StrayCurve curve =
                new Playing.StrayCurve(
                        List.of(
                                new Playing.Lane(
                                        "skew",
                                        lowSkew,
                                        highSkew,
                                        span * allowedSkew,
                                        span * table.at(RunColumn.SKEW, time)),
                                new Playing.Lane(
                                        "bridge",
                                        lowX,
                                        highX,
                                        allowed,
                                        table.at(RunColumn.ERROR_X, time)),
                                new Playing.Lane(
                                        "rails",
                                        lowY,
                                        highY,
                                        allowed,
                                        table.at(RunColumn.ERROR_Y, time))),
                        margin,
                        1.1 * reach);
        int now = Math.min(trackX.length - 1, table.row(time) / stride);
        Playing.Track track =
                new Playing.Track(
                        trackX, trackY, trackErrorX, trackErrorY, toolZ, larger, inkEnd(), now);
        return new Playing.Way(end, wayAt(time), corners, curve, track, notes);
    }
}
