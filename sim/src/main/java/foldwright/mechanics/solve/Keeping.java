// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

/**
 * Decides how long a factorisation is kept, from the contraction that Newton really shows with it.
 *
 * <p>The contraction of a fresh factor is measured in the first steps and again every {@link
 * #RECHECK} steps by a second solve; that of a kept one grows with its age and is measured at a few
 * ages. A kept factor that costs a second solve is given up for a while: motion is then too fast
 * for it.
 */
final class Keeping {
    /** A factor is renewed within a step when it contracts less than this. */
    static final double SLOW = 0.2;

    /** Oldest factor that is still used [steps]. */
    private static final int OLDEST = 50;

    /** Steps after which the contraction of a fresh factor is measured again. */
    private static final int RECHECK = 60;

    /** Steps for which keeping is given up after it did not pay. */
    private static final int SHORTEST_PAUSE = 20;

    private static final int LONGEST_PAUSE = 640;

    /** Factor on a measured contraction: it may grow before the next measurement. */
    private static final double SAFETY = 3;

    /** No contraction is trusted to be better than this. */
    private static final double BEST = 3e-5;

    /**
     * Share of the tolerance that a kept factor may leave: what it leaves has the same sign step
     * after step and adds up, while the remainders of fresh factors are far below the tolerance.
     */
    private static final double KEPT_SHARE = 0.03;

    private double fresh = 1;
    private int freshChecks;
    private int freshAge;
    private double slope = 1;
    private boolean slopeKnown;
    private int checkedAge;
    private int noKeeping;
    private int pause = SHORTEST_PAUSE;

    /** Whether the next step should factorise although a factor of {@code age} steps exists. */
    boolean renew(int age) {
        return age >= OLDEST || noKeeping > 0;
    }

    /** A second solve with a factor of {@code age} steps shrank the correction to {@code ratio}. */
    void measured(int age, double ratio) {
        if (age == 0) {
            fresh = freshChecks == 0 ? ratio : Math.max(ratio, 0.5 * fresh);
            freshChecks++;
            freshAge = 0;
        } else {
            double s = ratio / age;
            slope = slopeKnown ? Math.max(s, 0.5 * slope) : s;
            slopeKnown = true;
            checkedAge = age;
        }
    }

    /** Bound on what the next solve would leave of a correction. */
    double contraction(int age, boolean second) {
        if (age == 0) {
            boolean known = freshChecks > 0 && freshAge < RECHECK || second && freshChecks > 0;
            return known ? limit(SAFETY * fresh) : 1;
        }
        boolean known = slopeKnown && (age < 4 * checkedAge || second);
        return (known ? limit(SAFETY * (fresh + slope * age)) : 1) / KEPT_SHARE;
    }

    private static double limit(double k) {
        return Math.max(BEST, Math.min(1, k));
    }

    /** A kept factor contracted so badly that it had to be renewed within its step. */
    void gaveUp() {
        pause();
    }

    /** Keeping does not pay at present: pauses, each time twice as long. */
    private void pause() {
        noKeeping = pause;
        pause = Math.min(LONGEST_PAUSE, 2 * pause);
    }

    /**
     * A step was accepted.
     *
     * @param age of the factor [steps]
     * @param first size of its first correction [m]
     * @param tolerance below which a correction may stay unsolved [m]
     */
    void accepted(int age, double first, double tolerance) {
        freshAge++;
        if (age == 0) {
            noKeeping = Math.max(0, noKeeping - 1);
        } else if (slopeKnown
                && first * limit(SAFETY * (fresh + slope * age)) >= KEPT_SHARE * tolerance) {
            // one solve with this factor is not enough: motion is too fast for keeping
            pause();
        } else if (age > 2) {
            pause = SHORTEST_PAUSE;
        }
    }
}
