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

    // Force at n.
    double fx;
    double fy;
    double moment;

    MovingBody(double massX, double massY, double inertia) {
        this.massX = massX;
        this.massY = massY;
        this.inertia = inertia;
        perMassX = 1 / massX;
        perMassY = 1 / massY;
        perInertia = 1 / inertia;
    }

    /** Stands square and at rest at a place [m]. */
    void stand(double newX, double newY) {
        x = newX;
        y = newY;
        yaw = 0;
        vx = vy = vyaw = 0;
        ax = ay = ayaw = 0;
    }

    /** Stands where another one does. */
    void placeAs(MovingBody other) {
        x = other.x;
        y = other.y;
        yaw = other.yaw;
    }

    /**
     * Velocity at n for forces that damp, predicted over half a step with the last acceleration.
     */
    double speedX(double half) {
        return fma(half, ax, vx);
    }

    double speedY(double half) {
        return fma(half, ay, vy);
    }

    double speedYaw(double half) {
        return fma(half, ayaw, vyaw);
    }

    /** One leapfrog step of h [s]. */
    void advance(double h) {
        ax = fx * perMassX;
        ay = fy * perMassY;
        ayaw = moment * perInertia;
        vx = fma(h, ax, vx);
        vy = fma(h, ay, vy);
        vyaw = fma(h, ayaw, vyaw);
        x = fma(h, vx, x);
        y = fma(h, vy, y);
        yaw = fma(h, vyaw, yaw);
    }

    /** Numbers that {@link #save} writes. */
    static final int SAVED = 12;

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
        return at + SAVED;
    }
}
