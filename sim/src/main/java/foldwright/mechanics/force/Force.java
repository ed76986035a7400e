// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.force;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Stiffness;

/** Something that loads bodies other than a joint. */
public interface Force {
    String name();

    /** Indices of the bodies that its tangents couple. */
    int[] bodies();

    /** Adds force [N, base frame] and moment about the centre [N m, body axes], 6 a body. */
    void apply(State s, double[] load);

    /**
     * Adds {@code stiffness} times the symmetric part of -dF/dq and {@code damping} times that of
     * -dF/dv, at the state of the last {@link #apply}.
     */
    void tangent(State s, double stiffness, double damping, Stiffness out);

    /** Adds {@code stiffness} times what the change of geometry under load adds to -dF/dq. */
    void geometric(State s, double stiffness, Stiffness out);

    /** Energy stored at the state of the last {@link #apply} [J]. */
    default double energy() {
        return 0;
    }

    /** Work that it brought in as a source (motor, load) over the accepted steps [J]. */
    default double work() {
        return 0;
    }

    /** Work that it turned into heat over the accepted steps [J]. */
    default double heat() {
        return 0;
    }

    /** Largest change of its coordinate in one Newton update [m or rad]. */
    default double largestUpdate() {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Change of its coordinate, linearised [m or rad], by body displacements that stand at {@code
     * z[6 body + shift]}; the base does not move.
     */
    default double change(double[] z, int shift) {
        return 0;
    }

    /**
     * How far its coordinate could be astray for a change of rate within a step [m or rad]: half
     * the step times that change, with the change of rate that displacements {@code z} times {@code
     * rateFactor} bring.
     */
    default double astray(double[] z, int shift, double rateFactor, double step) {
        return 0;
    }

    /** Whether it changed too far since the last accepted step for that step to be believed. */
    default boolean coarse() {
        return false;
    }

    /** Called at the start of a run, after {@link #apply}: sums of work begin at zero. */
    default void begin(State s) {}

    /** Called when a step is accepted, after {@link #apply}: sums up work. */
    default void accept(State s) {}
}
