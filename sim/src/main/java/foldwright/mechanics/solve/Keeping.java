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
    private static final int RECHECK = 40;

    /** Factor on a measured contraction: it may grow before the next measurement. */
    private static final double SAFETY = 3;

    /** No contraction is trusted to be better than this. */
    private static final double BEST = 1e-4;

    private double fresh = 1;
    private int freshChecks;
    private int freshAge;
    private double slope = 1;
    private boolean slopeKnown;
    private int checkedAge;
    private int noKeeping;

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
        return known ? limit(SAFETY * (fresh + slope * age)) : 1;
    }

    private static double limit(double k) {
        return Math.max(BEST, Math.min(1, k));
    }

    /** A step was accepted after {@code solves} solves. */
    void accepted(int age, int solves) {
        freshAge++;
        if (age > 0 && solves > 1 && checkedAge != age) {
            noKeeping = RECHECK;
        } else if (age > 0 && solves > 2) {
            noKeeping = RECHECK;
        } else if (noKeeping > 0) {
            noKeeping--;
        }
        if (age == 0) {
            checkedAge = Math.min(checkedAge, 1);
        }
    }
}
