// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.ScalarRow;
import java.util.Optional;

/** A pose with its joint loads in balance, or the reason why none was found. */
public final class Equilibrium {
    private final State state;
    private final double[] lambda;
    private final int iterations;
    private final Failure failure;

    Equilibrium(State state, double[] lambda, int iterations, Failure failure) {
        this.state = state.copy();
        this.lambda = lambda.clone();
        this.iterations = iterations;
        this.failure = failure;
    }

    /** Whether it is an equilibrium. */
    public boolean found() {
        return failure == null;
    }

    public Optional<Failure> failure() {
        return Optional.ofNullable(failure);
    }

    /** Newton solves it took. */
    public int iterations() {
        return iterations;
    }

    /** The pose; a copy. */
    public State state() {
        return state.copy();
    }

    /** Multipliers of all rows; a copy. */
    public double[] multipliers() {
        return lambda.clone();
    }

    /** Load on marker B's body of a joint, in the axes of A [N, N m]. */
    public double load(PairJoint joint, Freedom f) {
        return joint.load(f, lambda);
    }

    /** Multiplier of a scalar row: driving force, coupling load, friction [N, N m]. */
    public double load(ScalarRow row) {
        return lambda[row.rowAt()];
    }
}
