// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/**
 * Bridge or carriage in the plane: place of its centre of mass and its yaw, counter-clockwise. Its
 * mass may differ along x and y, where wheels and belts ride on one of the two ways.
 */
final class MovingBody {
    final double massX;
    final double massY;
    final double inertia;
    private final double perMassX;
    private final double perMassY;
    private final double perInertia;

    /** By how much the place ahead is ahead: damping time of the belts [s]. */
    private final double lead;

    // State. Place at n, velocity at n - 1/2 before advance, acceleration at n.
    double x;
    double y;
    double yaw;
    double vx;
    double vy;
    double vyaw;
    double ax;
    double ay;
    double ayaw;

    // Velocity at n for forces that damp, predicted over half a step with the last acceleration;
    // and the place ahead along it: a tension is linear in place and speed, so that one sum over
    // the place ahead serves both.
    double ux;
    double uy;
    double uyaw;
    double aheadX;
    double aheadY;
    double aheadYaw;

    // Force at n.
    double fx;
    double fy;
    double moment;

    MovingBody(double massX, double massY, double inertia, double lead) {
        this.massX = massX;
        this.massY = massY;
        this.inertia = inertia;
        this.lead = lead;
        perMassX = 1 / massX;
        perMassY = 1 / massY;
        perInertia = 1 / inertia;
    }

    /** Stands at rest at a place [m, rad]. */
    void stand(double newX, double newY, double newYaw) {
        x = aheadX = newX;
        y = aheadY = newY;
        yaw = aheadYaw = newYaw;
        vx = vy = vyaw = 0;
        ux = uy = uyaw = 0;
        ax = ay = ayaw = 0;
    }

    /** One leapfrog step of h [s]. */
    void advance(double h) {
        double half = 0.5 * h;
        ax = fx * perMassX;
        vx = fma(h, ax, vx);
        ux = fma(half, ax, vx);
        x = fma(h, vx, x);
        aheadX = fma(lead, ux, x);
        ay = fy * perMassY;
        vy = fma(h, ay, vy);
        uy = fma(half, ay, vy);
        y = fma(h, vy, y);
        aheadY = fma(lead, uy, y);
        ayaw = moment * perInertia;
        vyaw = fma(h, ayaw, vyaw);
        uyaw = fma(half, ayaw, vyaw);
        yaw = fma(h, vyaw, yaw);
        aheadYaw = fma(lead, uyaw, yaw);
    }

    /** Numbers that {@link #save} writes. */
    static final int SAVED = 18;

    /** Writes state and force from a place in an array on; gives the next place. */
    int save(double[] out, int at) {
        out[at] = x;
        out[at + 1] = y;
        out[at + 2] = yaw;
        out[at + 3] = vx;
        out[at + 4] = vy;
        out[at + 5] = vyaw;
        out[at + 6] = ax;
        out[at + 7] = ay;
        out[at + 8] = ayaw;
        out[at + 9] = fx;
        out[at + 10] = fy;
        out[at + 11] = moment;
        out[at + 12] = ux;
        out[at + 13] = uy;
        out[at + 14] = uyaw;
        out[at + 15] = aheadX;
        out[at + 16] = aheadY;
        out[at + 17] = aheadYaw;
        return at + SAVED;
    }

    /** Takes back what {@link #save} wrote; gives the next place. */
    int restore(double[] in, int at) {
        x = in[at];
        y = in[at + 1];
        yaw = in[at + 2];
        vx = in[at + 3];
        vy = in[at + 4];
        vyaw = in[at + 5];
        ax = in[at + 6];
        ay = in[at + 7];
        ayaw = in[at + 8];
        fx = in[at + 9];
        fy = in[at + 10];
        moment = in[at + 11];
        ux = in[at + 12];
        uy = in[at + 13];
        uyaw = in[at + 14];
        aheadX = in[at + 15];
        aheadY = in[at + 16];
        aheadYaw = in[at + 17];
        return at + SAVED;
    }
}
