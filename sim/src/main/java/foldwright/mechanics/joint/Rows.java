// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;
import java.util.Arrays;
import java.util.Locale;

/**
 * A block of constraint rows {@code phi + c lambda + d dphi/dt = 0} between a few bodies.
 *
 * <p>{@code lambda} is the force [N] or moment [N m] that acts on the bodies along increasing
 * {@code phi}: the bodies receive G' lambda with G = d phi / d(shift [base frame], turn [body
 * axes]). {@code c} is the compliance [m/N, rad/(N m)], {@code d} the relaxation time of a damped
 * row [s] times one.
 *
 * <p>The Jacobian for each body of the list is row-major, {@code size} x 6.
 */
public abstract class Rows {
    /** Compliance taken for an ideal row [m/N; rad/(N m) for scalar rows]. */
    public static final double IDEAL = 1e-12;

    /**
     * Compliance taken for an ideal turn row of a joint [rad/(N m)]: {@link #IDEAL} over an arm of
     * 0.1 m squared. Redundant moments of thin bodies would drown in rounding with less.
     */
    public static final double IDEAL_TURN = 1e-10;

    private final String name;
    private final int[] bodies;
    private final int size;
    private final double[] compliance;
    private final double[] damping;
    private int rowAt;

    Rows(String name, int size, int... bodies) {
        this.name = name;
        this.size = size;
        this.bodies = bodies;
        compliance = new double[size];
        Arrays.fill(compliance, IDEAL);
        damping = new double[size];
    }

    public final String name() {
        return name;
    }

    /** Number of rows. */
    public final int size() {
        return size;
    }

    /** Number of bodies; the base may be among them. */
    public final int count() {
        return bodies.length;
    }

    /** Index of body {@code k} of the list. */
    public final int body(int k) {
        return bodies[k];
    }

    /** First row in the vectors of the solver. */
    public final int rowAt() {
        return rowAt;
    }

    /** Called once by the mechanism when it hands out places. */
    public final void place(int row) {
        rowAt = row;
    }

    /** Compliance of a row [m/N, rad/(N m)]. */
    public final double compliance(int row) {
        return compliance[row];
    }

    /** Damping of a row [s]: phi + c lambda + d dphi/dt = 0. */
    public final double damping(int row) {
        return damping[row];
    }

    /** Sets compliance [m/N, rad/(N m)] and damping [s] of one row. */
    public final void soften(int row, double c, double d) {
        if (!(c >= 0) || !(d >= 0) || Double.isInfinite(c + d)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "\"%s\" row %d: compliance %s and damping %s must be finite and not below 0",
                            name,
                            row,
                            c,
                            d));
        }
        compliance[row] = c;
        damping[row] = d;
    }

    /** What a row stands for, for messages, e.g. "force along x". */
    public abstract String rowName(int row);

    /**
     * Writes phi at {@code phi[rowAt...]} and the Jacobian, body after body, at {@code g[at...]}.
     */
    public abstract void evaluate(State s, double[] phi, double[] g, int at);

    /**
     * Writes the second time derivative of phi for zero body accelerations at {@code out[rowAt]}.
     */
    public abstract void convective(State s, double[] out);

    /** Adds - lambda times the second derivative of phi: the geometric stiffness. */
    public abstract void geometric(State s, double[] lambda, Stiffness out);

    /** Called when a step is accepted. */
    public void accept(State s, double[] lambda) {}

    /** Largest arm of the rows on a body [m], for scaling; 0 if they have none. */
    public double reach(int k) {
        return 0;
    }
}
