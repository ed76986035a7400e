// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.abs;
import static java.lang.Math.hypot;
import static java.lang.Math.sqrt;

/**
 * Centre and sweep of an arc from its words, by NISTIR 6556 (2000) sections 3.5.3.1 (radius form)
 * and 3.5.3.2 (centre form).
 */
final class ArcCentre {
    /**
     * Start and end radius may differ by this before it is told [m]; section 3.5.3, millimetre
     * mode.
     */
    static final double TOLD = 2e-6;

    /** Above this the arc is refused [m]; common practice, no source. */
    static final double REFUSED = 5e-4;

    /** Ends nearer than this are one point [m]. */
    private static final double SAME = 1e-10;

    private final double[] centre = new double[2];
    private double sweep;
    private double mismatch;

    /** Along the plane's first and second axis [m]; valid until the next arc. */
    double[] centre() {
        return centre;
    }

    /** Positive from the first to the second axis [rad]. */
    double sweep() {
        return sweep;
    }

    /** Difference of start and end radius [m]. */
    double mismatch() {
        return mismatch;
    }

    /** Centre form: the centre lies at an offset from the start. */
    void fromOffset(
            double[] from, double[] to, Plane plane, double i, double j, boolean clockwise) {
        centre[0] = from[plane.first()] + i;
        centre[1] = from[plane.second()] + j;
        finish(from, to, plane, clockwise);
    }

    /**
     * Radius form; a negative radius takes the way round that is longer than half a circle.
     *
     * @return false where the ends are one point or further apart than the circle is wide
     */
    boolean fromRadius(double[] from, double[] to, Plane plane, double radius, boolean clockwise) {
        double du = to[plane.first()] - from[plane.first()];
        double dv = to[plane.second()] - from[plane.second()];
        double chord = hypot(du, dv);
        if (chord < SAME) {
            return false;
        }
        double height2 = radius * radius - chord * chord / 4;
        if (height2 < 0) {
            if (chord / 2 - abs(radius) > TOLD) {
                return false;
            }
            height2 = 0;
        }
        double side = clockwise == (radius > 0) ? -1 : 1;
        double scale = side * sqrt(height2) / chord;
        centre[0] = from[plane.first()] + du / 2 - dv * scale;
        centre[1] = from[plane.second()] + dv / 2 + du * scale;
        finish(from, to, plane, clockwise);
        return true;
    }

    private void finish(double[] from, double[] to, Plane plane, boolean clockwise) {
        double u0 = from[plane.first()] - centre[0];
        double v0 = from[plane.second()] - centre[1];
        double u1 = to[plane.first()] - centre[0];
        double v1 = to[plane.second()] - centre[1];
        mismatch = abs(hypot(u1, v1) - hypot(u0, v0));
        double turn = Math.atan2(u0 * v1 - v0 * u1, u0 * u1 + v0 * v1);
        boolean closed = hypot(u1 - u0, v1 - v0) < SAME;
        if (clockwise) {
            sweep = closed || turn >= 0 ? turn - 2 * Math.PI : turn;
        } else {
            sweep = closed || turn <= 0 ? turn + 2 * Math.PI : turn;
        }
        if (closed) {
            sweep = clockwise ? -2 * Math.PI : 2 * Math.PI;
        }
    }
}
