// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.body.State;
import foldwright.mechanics.solve.Stepper;
import java.util.function.Function;

/** Runs a stepper along a reference curve and keeps the largest deviation. */
public final class Trajectory {
    private Trajectory() {}

    /**
     * Largest absolute difference, up to {@code end} [s], between columns of the curve from {@code
     * column} on and what {@code read} takes from the state at the same instants; not a number if
     * the run fails.
     */
    public static double deviation(
            Stepper run,
            ReferenceCurve curve,
            int column,
            double end,
            Function<State, double[]> read) {
        double worst = 0;
        for (int i = 1; i < curve.size() && curve.time(i) <= end + 1e-9; i++) {
            if (run.runTo(curve.time(i)) == Stepper.Outcome.FAILED) {
                return Double.NaN;
            }
            double[] now = read.apply(run.state());
            for (int c = 0; c < now.length; c++) {
                worst = Math.max(worst, Math.abs(now[c] - curve.value(i, column + c)));
            }
        }
        return worst;
    }
}
