// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.abs;
import static java.lang.Math.cos;
import static java.lang.Math.hypot;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;

/**
 * One move of a toolpath in machine coordinates: a buffer that sources fill and planners copy, so
 * that a toolpath of any length allocates nothing. A move knows its geometry and the speed asked
 * for, not its timing.
 */
public final class Move {
    /** What a move is. */
    public enum Kind {
        /** A straight line. */
        LINE,
        /**
         * A circular arc or helix; its radius is blended where start and end disagree by rounding.
         */
        ARC,
        /** Standing still for a time, which may be zero: the tool comes to rest before it. */
        PAUSE
    }

    /** What sets the speed of a move. */
    public enum Rate {
        /** The feed asked for. */
        FEED,
        /** As fast as the axes go. */
        RAPID
    }

    private Kind kind = Kind.PAUSE;
    private Rate rate = Rate.FEED;
    private final double[] start = new double[3];
    private final double[] end = new double[3];
    private double length;

    // Direction of a line, zero for a pause.
    private double directionX;
    private double directionY;
    private double directionZ;
    private double feed;
    private double pause;
    private double acceleration;
    private long line;

    // Arc: axes of its plane (first, second) and normal, in the order that makes a right-handed
    // frame.
    private int first;
    private int second;
    private int normal;
    private double centreFirst;
    private double centreSecond;
    private double startRadius;
    private double endRadius;
    private double startAngle;
    private double sweep;

    /** Makes this a straight line from {@code from} to {@code to} [m]. */
    public void setLine(double[] from, double[] to, Rate newRate, double newFeed, long newLine) {
        begin(Kind.LINE, from, to, newRate, newFeed, newLine);
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double dz = to[2] - from[2];
        length = sqrt(dx * dx + dy * dy + dz * dz);
        double scale = length > 0 ? 1 / length : 0;
        directionX = dx * scale;
        directionY = dy * scale;
        directionZ = dz * scale;
    }

    /**
     * Makes this an arc about a centre in the plane of two axes.
     *
     * @param plane the plane it lies in
     * @param centre centre along the plane's first and second axis [m]
     * @param newSweep angle swept, positive from the first to the second axis [rad]
     */
    public void setArc(
            double[] from,
            double[] to,
            Plane plane,
            double[] centre,
            double newSweep,
            double newFeed,
            long newLine) {
        begin(Kind.ARC, from, to, Rate.FEED, newFeed, newLine);
        first = plane.first();
        second = plane.second();
        normal = plane.normal();
        centreFirst = centre[0];
        centreSecond = centre[1];
        double u = from[first] - centreFirst;
        double v = from[second] - centreSecond;
        startRadius = hypot(u, v);
        endRadius = hypot(to[first] - centreFirst, to[second] - centreSecond);
        startAngle = Math.atan2(v, u);
        sweep = newSweep;
        length = hypot(0.5 * (startRadius + endRadius) * sweep, to[normal] - from[normal]);
    }

    /** Makes this a pause of {@code seconds} [s] at {@code at} [m]. */
    public void setPause(double[] at, double seconds, long newLine) {
        begin(Kind.PAUSE, at, at, Rate.FEED, 0, newLine);
        length = 0;
        directionX = directionY = directionZ = 0;
        pause = seconds;
    }

    private void begin(
            Kind k, double[] from, double[] to, Rate newRate, double newFeed, long newLine) {
        kind = k;
        rate = newRate;
        for (int i = 0; i < 3; i++) {
            start[i] = from[i];
            end[i] = to[i];
        }
        feed = newFeed;
        line = newLine;
        pause = 0;
        acceleration = Double.POSITIVE_INFINITY;
    }

    /** Makes this an exact copy of another move. */
    public void copyFrom(Move other) {
        begin(other.kind, other.start, other.end, other.rate, other.feed, other.line);
        length = other.length;
        directionX = other.directionX;
        directionY = other.directionY;
        directionZ = other.directionZ;
        pause = other.pause;
        acceleration = other.acceleration;
        first = other.first;
        second = other.second;
        normal = other.normal;
        centreFirst = other.centreFirst;
        centreSecond = other.centreSecond;
        startRadius = other.startRadius;
        endRadius = other.endRadius;
        startAngle = other.startAngle;
        sweep = other.sweep;
    }

    /**
     * Lowers the acceleration that this one move may use [m/s2]; probe moves of growing
     * acceleration ask for it.
     */
    public void limitAcceleration(double limit) {
        acceleration = limit;
    }

    public Kind kind() {
        return kind;
    }

    public Rate rate() {
        return rate;
    }

    /** Length of the path [m]; 0 for a pause. */
    public double length() {
        return length;
    }

    /** Speed asked for along the path [m/s]; 0 where no feed was given yet. */
    public double feed() {
        return feed;
    }

    /** Duration of a pause [s]. */
    public double pause() {
        return pause;
    }

    /** Largest acceleration this move may use [m/s2]; infinite where only the machine limits it. */
    public double acceleration() {
        return acceleration;
    }

    /** 1-based line of the toolpath this move came from. */
    public long line() {
        return line;
    }

    /** Start along axis 0, 1 or 2 [m]. */
    public double start(int axis) {
        return start[axis];
    }

    /** End along axis 0, 1 or 2 [m]. */
    public double end(int axis) {
        return end[axis];
    }

    /** Unit direction of a line along axis 0, 1 or 2; zero for a pause [1]. */
    double direction(int axis) {
        return axis == 0 ? directionX : axis == 1 ? directionY : directionZ;
    }

    /** Angle swept by an arc [rad]. */
    public double sweep() {
        return sweep;
    }

    /** Angle of an arc's start, from the plane's first axis [rad]. */
    double startAngle() {
        return startAngle;
    }

    /** The plane's first, second and normal axis of an arc, by rank 0, 1, 2. */
    int arcAxis(int rank) {
        return rank == 0 ? first : rank == 1 ? second : normal;
    }

    /** Smallest radius of an arc [m]; infinite for a line. */
    public double radius() {
        return kind == Kind.ARC ? Math.min(startRadius, endRadius) : Double.POSITIVE_INFINITY;
    }

    /** Writes the point after a length {@code s} [m] of the path. */
    public void point(double s, double[] out) {
        double f = length > 0 ? s / length : 1;
        if (kind == Kind.ARC) {
            double r = startRadius + (endRadius - startRadius) * f;
            double angle = startAngle + sweep * f;
            out[first] = centreFirst + r * cos(angle);
            out[second] = centreSecond + r * sin(angle);
            out[normal] = start[normal] + (end[normal] - start[normal]) * f;
            return;
        }
        for (int i = 0; i < 3; i++) {
            out[i] = start[i] + (end[i] - start[i]) * f;
        }
    }

    /** Writes the unit tangent after a length {@code s} [m]; all zero for a pause. */
    public void tangent(double s, double[] out) {
        if (length == 0) {
            out[0] = out[1] = out[2] = 0;
            return;
        }
        if (kind == Kind.ARC) {
            double f = s / length;
            double dr = (endRadius - startRadius) / length;
            double r = startRadius + (endRadius - startRadius) * f;
            double angle = startAngle + sweep * f;
            double turn = r * sweep / length;
            double u = dr * cos(angle) - turn * sin(angle);
            double v = dr * sin(angle) + turn * cos(angle);
            double w = (end[normal] - start[normal]) / length;
            double scale = 1 / norm(u, v, w);
            out[first] = u * scale;
            out[second] = v * scale;
            out[normal] = w * scale;
            return;
        }
        out[0] = directionX;
        out[1] = directionY;
        out[2] = directionZ;
    }

    /** Writes the state on a line after a length [m], at a speed and an acceleration along it. */
    void sample(double s, double v, double a, CourseSample out) {
        out.x = start[0] + s * directionX;
        out.y = start[1] + s * directionY;
        out.z = start[2] + s * directionZ;
        out.vx = v * directionX;
        out.vy = v * directionY;
        out.vz = v * directionZ;
        out.ax = a * directionX;
        out.ay = a * directionY;
        out.az = a * directionZ;
    }

    /**
     * Writes the curvature vector (change of the tangent with length) after a length {@code s}
     * [1/m].
     */
    public void curvature(double s, double[] out) {
        out[0] = out[1] = out[2] = 0;
        if (kind != Kind.ARC) {
            return;
        }
        double f = s / length;
        double r = startRadius + (endRadius - startRadius) * f;
        double angle = startAngle + sweep * f;
        double rate2 = sweep / length * (sweep / length);
        out[first] = -r * rate2 * cos(angle);
        out[second] = -r * rate2 * sin(angle);
    }

    /** Whether the move has no curvature. */
    boolean straight() {
        return kind != Kind.ARC;
    }

    /** Largest distance of any end of this move from the origin along an axis [m]. */
    double reach() {
        double most = 0;
        for (int i = 0; i < 3; i++) {
            most = Math.max(most, Math.max(abs(start[i]), abs(end[i])));
        }
        return kind == Kind.ARC ? most + 2 * Math.max(startRadius, endRadius) : most;
    }

    private static double norm(double a, double b, double c) {
        return sqrt(a * a + b * b + c * c);
    }
}
