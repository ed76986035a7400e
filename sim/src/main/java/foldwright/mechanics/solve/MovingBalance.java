// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

/**
 * Result of {@link Kinetostatics}: loads while moving, or that the mechanism locks, or a failure.
 */
public final class MovingBalance {
    /** What was found. */
    public enum Outcome {
        /** Loads in balance while everything that moves slides. */
        BALANCED,
        /** Friction feeds on itself: no drive however strong moves it. */
        LOCKED,
        /** No solution found even without friction. */
        FAILED
    }

    private final Equilibrium balance;
    private final Outcome outcome;
    private final double amplification;
    private final double[] shares;
    private final double share;

    MovingBalance(
            Equilibrium balance,
            Outcome outcome,
            double amplification,
            double[] shares,
            double share) {
        this.balance = balance;
        this.outcome = outcome;
        this.amplification = amplification;
        this.shares = shares.clone();
        this.share = share;
    }

    /** The same findings about friction at another pose of a course. */
    MovingBalance at(Equilibrium other) {
        return new MovingBalance(other, outcome, amplification, shares, share);
    }

    /** The same with other findings about friction. */
    MovingBalance with(double amplifies, double[] by) {
        return new MovingBalance(balance, outcome, amplifies, by, share);
    }

    public Outcome outcome() {
        return outcome;
    }

    /**
     * Pose and loads; for {@link Outcome#LOCKED} those at the largest share of the friction that
     * has a balance.
     */
    public Equilibrium balance() {
        return balance;
    }

    /**
     * How strongly friction feeds on itself [1]: all friction coefficients times 1/amplification
     * would lock the mechanism; 1 or more is locked.
     */
    public double amplification() {
        return amplification;
    }

    /**
     * Share of the given friction up to which a balance exists [1]; 1 if it does at full friction.
     */
    public double reachableShare() {
        return share;
    }

    /** Share of a friction row, by its order among friction rows, in what feeds on itself [1]. */
    public double lockingShare(int friction) {
        return shares[friction];
    }
}
