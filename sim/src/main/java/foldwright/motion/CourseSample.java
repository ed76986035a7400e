// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/**
 * The commanded state of the tool at one instant: a buffer that a {@link Course} fills, so that a
 * replay allocates nothing.
 */
public final class CourseSample {
    /** Position in machine coordinates [m]. */
    public double x;

    public double y;
    public double z;

    /** Velocity [m/s]. */
    public double vx;

    public double vy;
    public double vz;

    /**
     * Acceleration inside the move [m/s2]; a corner passed at speed is a step of the velocity and
     * not seen here.
     */
    public double ax;

    public double ay;
    public double az;

    /** Line of the toolpath that the move came from, 1-based; 0 where there is none. */
    public long line;
}
