// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;

/**
 * A scalar function of the poses of a few bodies: angle about an axis, travel along one, distance,
 * or a linear combination. Force laws, drivers, stops and friction all act along a coordinate.
 *
 * <p>Gradients are with respect to displacement of the centre [base frame] and turn [body axes],
 * six numbers a body in the order of {@link #bodies()}.
 */
public abstract class Coordinate {
    private final int[] bodies;

    Coordinate(int... bodies) {
        this.bodies = bodies;
    }

    /** Indices of the bodies it depends on; the base may be among them. */
    public final int[] bodies() {
        return bodies.clone();
    }

    final int body(int k) {
        return bodies[k];
    }

    final int count() {
        return bodies.length;
    }

    /** Value [m or rad]. */
    public abstract double value(State s);

    /** Value, and the gradient written at {@code g[at...]}. */
    public abstract double evaluate(State s, double[] g, int at);

    /** Second time derivative of the value for zero body accelerations [m/s2 or rad/s2]. */
    public abstract double convective(State s);

    /** Adds {@code factor} times the second derivative of the value. */
    public abstract void hessian(State s, double factor, Stiffness out);

    /** Remembers the present value where the function alone does not tell it (several turns). */
    public void accept(State s) {}

    /** Rate from a gradient written before [m/s or rad/s]. */
    public final double rate(State s, double[] g, int at) {
        double sum = 0;
        for (int k = 0; k < bodies.length; k++) {
            int i = 6 * bodies[k];
            int j = at + 6 * k;
            for (int c = 0; c < 6; c++) {
                sum += g[j + c] * s.v[i + c];
            }
        }
        return sum;
    }

    /** Rate [m/s or rad/s]; allocates. */
    public final double rate(State s) {
        double[] g = new double[6 * bodies.length];
        evaluate(s, g, 0);
        return rate(s, g, 0);
    }
}
