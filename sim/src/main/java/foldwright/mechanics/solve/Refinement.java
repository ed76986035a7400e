// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import java.util.function.DoubleFunction;

/**
 * A run and its refinement by a second one at twice the step: the integrator's error is C h2 +
 * O(h3) in smooth motion, so the difference of the two is three times the error of the finer one
 * (L. F. Richardson, The deferred approach to the limit, Phil. Trans. R. Soc. A 226 (1927)
 * 299-361).
 *
 * <p>Where contacts switch in between the error is not a power of the step; {@link #order} tells.
 *
 * @param plain what the run itself says
 * @param refined (4 plain - coarse) / 3
 * @param error estimated error of the plain values, (coarse - plain) / 3
 */
public record Refinement(double[] plain, double[] refined, double[] error) {
    /**
     * @param run what a run with a given step [s] says, the same quantities each time; it builds
     *     its own mechanism
     * @param step of the finer run [s]
     */
    public static Refinement of(DoubleFunction<double[]> run, double step) {
        double[] fine = run.apply(step);
        double[] coarse = run.apply(2 * step);
        double[] refined = new double[fine.length];
        double[] error = new double[fine.length];
        for (int i = 0; i < fine.length; i++) {
            refined[i] = (4 * fine[i] - coarse[i]) / 3;
            error[i] = (coarse[i] - fine[i]) / 3;
        }
        return new Refinement(fine, refined, error);
    }

    /**
     * Order of the error that two refinements show, the second with all steps doubled: 2 where
     * {@link #refined} can be trusted.
     */
    public static double order(Refinement fine, Refinement coarse, int quantity) {
        return Math.log(coarse.error[quantity] / fine.error[quantity]) / Math.log(2);
    }

    /** Largest difference of refined values from given ones. */
    public double refinedGap(double[] wanted) {
        return gap(refined, wanted);
    }

    /** Largest difference of plain values from given ones. */
    public double plainGap(double[] wanted) {
        return gap(plain, wanted);
    }

    private static double gap(double[] found, double[] wanted) {
        double worst = 0;
        for (int i = 0; i < found.length; i++) {
            worst = Math.max(worst, Math.abs(found[i] - wanted[i]));
        }
        return worst;
    }
}
