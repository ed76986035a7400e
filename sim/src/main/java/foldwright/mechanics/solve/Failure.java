// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import java.util.Locale;
import java.util.Objects;

/**
 * Why a solver stopped, and where.
 *
 * @param time time of the state that could not be found [s]
 * @param cause what happened
 * @param body body with the largest remaining correction
 * @param row row with the largest remaining violation
 * @param residual that correction [m], or how far off the branch [m or rad]
 */
public record Failure(double time, Cause cause, String body, String row, double residual) {
    /** What ended the solution. */
    public enum Cause {
        NO_CONVERGENCE("Newton did not settle"),
        NOT_A_NUMBER("a value is not a number"),
        WRONG_BRANCH("the solution lies on another branch of the linkage");

        private final String words;

        Cause(String words) {
            this.words = words;
        }
    }

    public Failure {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(row, "row");
    }

    /** One sentence. */
    public String message() {
        return String.format(
                Locale.ROOT,
                "at %.6g s: %s; body \"%s\", row \"%s\", off by %.3g m",
                time,
                cause.words,
                body,
                row,
                residual);
    }
}
