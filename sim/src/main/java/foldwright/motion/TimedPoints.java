// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import foldwright.motion.ToolpathException.Fault;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * A course given as timed points: CSV with a header such as {@code time [s],x [mm],y [mm]} (z is
 * optional, s or ms, m or mm), times rising. Between the points runs a cubic whose slopes are the
 * central differences of the points, so that speed is continuous; time counts from the first point.
 * Streams: only four points are held.
 */
public final class TimedPoints implements Course {
    private static final Map<String, Double> TIME_UNITS = Map.of("s", 1.0, "ms", 1e-3);
    private static final Map<String, Double> LENGTH_UNITS = Map.of("m", 1.0, "mm", 1e-3);
    private static final String HEADER = "a header such as time [s],x [mm],y [mm]";

    private final BufferedReader in;
    private final int[] column = {-1, -1, -1, -1};
    private final double[] scale = new double[4];
    private final double firstTime;
    private long line;

    // Points before, at the start, at the end and after the present interval: time, x, y, z, line.
    private double[][] window = new double[4][];
    private final double[] slope0 = new double[3];
    private final double[] slope1 = new double[3];

    /** Reads the header and the first points. */
    public TimedPoints(InputStream csv) throws ToolpathException {
        in = new BufferedReader(new InputStreamReader(csv, StandardCharsets.UTF_8));
        readHeader();
        window[1] = readPoint(Double.NEGATIVE_INFINITY);
        if (window[1] == null) {
            throw new ToolpathException(
                    Fault.BAD_POINT, line, "no point behind the header", "at least two points");
        }
        window[2] = readPoint(window[1][0]);
        if (window[2] == null) {
            throw new ToolpathException(
                    Fault.BAD_POINT, line, "only one point", "at least two points");
        }
        window[3] = readPoint(window[2][0]);
        firstTime = window[1][0];
        slopes();
    }

    private void readHeader() throws ToolpathException {
        String header = readLine();
        if (header == null) {
            throw new ToolpathException(Fault.BAD_POINT, 1, "an empty file", HEADER);
        }
        String[] cells = header.replace("\uFEFF", "").split(",", -1);
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i].strip().toLowerCase(Locale.ROOT);
            int open = cell.indexOf('[');
            String name = (open < 0 ? cell : cell.substring(0, open)).strip();
            int which =
                    switch (name) {
                        case "time", "t" -> 0;
                        case "x" -> 1;
                        case "y" -> 2;
                        case "z" -> 3;
                        default -> -1;
                    };
            if (which < 0) {
                continue;
            }
            String unit = open < 0 ? "" : cell.substring(open + 1).replace("]", "").strip();
            Double factor = (which == 0 ? TIME_UNITS : LENGTH_UNITS).get(unit);
            if (factor == null || column[which] >= 0) {
                throw new ToolpathException(
                        Fault.BAD_POINT, line, "column \"" + cells[i].strip() + "\"", HEADER);
            }
            column[which] = i;
            scale[which] = factor;
        }
        if (column[0] < 0 || column[1] < 0 || column[2] < 0) {
            throw new ToolpathException(
                    Fault.BAD_POINT, line, "a header without time, x and y", HEADER);
        }
    }

    private double[] readPoint(double after) throws ToolpathException {
        String text = readLine();
        while (text != null && text.isBlank()) {
            text = readLine();
        }
        if (text == null) {
            return null;
        }
        String[] cells = text.split(",", -1);
        double[] point = new double[5];
        for (int k = 0; k < 4; k++) {
            if (column[k] >= 0) {
                point[k] =
                        number(column[k] < cells.length ? cells[column[k]].strip() : "") * scale[k];
            }
        }
        point[4] = line;
        if (!(point[0] > after)) {
            throw new ToolpathException(
                    Fault.BAD_POINT,
                    line,
                    "time " + point[0] + " s after " + after + " s",
                    "times that rise");
        }
        return point;
    }

    private double number(String cell) throws ToolpathException {
        try {
            double value = Double.parseDouble(cell);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, like a number that is not finite
        }
        throw new ToolpathException(
                Fault.BAD_POINT, line, "\"" + cell + "\" where a number should be", "numbers");
    }

    private String readLine() throws ToolpathException {
        try {
            line++;
            return in.readLine();
        } catch (IOException e) {
            throw new ToolpathException(
                    Fault.UNREADABLE,
                    line,
                    "the file could not be read on (" + e.getMessage() + ")",
                    "a readable file");
        }
    }

    @Override
    public boolean at(double time, CourseSample out) throws ToolpathException {
        double t = time + firstTime;
        while (t >= window[2][0] && window[3] != null) {
            window = new double[][] {window[1], window[2], window[3], readPoint(window[3][0])};
            slopes();
        }
        boolean running = t < window[2][0];
        interpolate(Math.min(t, window[2][0]), out);
        if (!running) {
            out.vx = out.vy = out.vz = 0;
            out.ax = out.ay = out.az = 0;
        }
        return running;
    }

    private void slopes() {
        for (int k = 1; k <= 3; k++) {
            double chord = (window[2][k] - window[1][k]) / (window[2][0] - window[1][0]);
            slope0[k - 1] = window[0] == null ? chord : slope(window[0], window[2], k);
            slope1[k - 1] = window[3] == null ? chord : slope(window[1], window[3], k);
        }
    }

    private static double slope(double[] a, double[] b, int k) {
        return (b[k] - a[k]) / (b[0] - a[0]);
    }

    private void interpolate(double t, CourseSample out) {
        out.x = cubic(1, t, 0);
        out.y = cubic(2, t, 0);
        out.z = cubic(3, t, 0);
        out.vx = cubic(1, t, 1);
        out.vy = cubic(2, t, 1);
        out.vz = cubic(3, t, 1);
        out.ax = cubic(1, t, 2);
        out.ay = cubic(2, t, 2);
        out.az = cubic(3, t, 2);
        out.line = (long) window[2][4];
    }

    /**
     * The cubic through two points with given slopes (Hermite), or its first or second derivative.
     */
    private double cubic(int k, double t, int derivative) {
        double h = window[2][0] - window[1][0];
        double u = (t - window[1][0]) / h;
        double p0 = window[1][k];
        double d = window[2][k] - p0;
        double m0 = slope0[k - 1] * h;
        double m1 = slope1[k - 1] * h;
        double b = 3 * d - 2 * m0 - m1;
        double c = m0 + m1 - 2 * d;
        return switch (derivative) {
            case 0 -> p0 + u * (m0 + u * (b + u * c));
            case 1 -> (m0 + u * (2 * b + u * 3 * c)) / h;
            default -> (2 * b + u * 6 * c) / (h * h);
        };
    }
}
