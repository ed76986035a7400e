// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import java.util.Locale;

/**
 * How the integrator runs.
 *
 * @param step fixed step [s]
 * @param spectralRadius damping of the highest frequencies: 1 none, 0 all in one step; 0.8 is the
 *     default, 0.9 suits benchmarks, 1 is refused since undamped constraint modes diverge
 * @param tolerance largest error of a displacement left by Newton in a step [m]
 * @param iterations most Newton solves in a step before it is halved
 * @param halvings most halvings of a step before the run ends
 */
public record Settings(
        double step, double spectralRadius, double tolerance, int iterations, int halvings) {
    public Settings {
        require(step > 0 && step < 1e3, "step", step, "above 0 and below 1000 s");
        require(
                spectralRadius >= 0 && spectralRadius < 0.99,
                "spectral radius",
                spectralRadius,
                "from 0 to below 0.99");
        require(tolerance > 0 && tolerance < 1e-3, "tolerance", tolerance, "above 0, below 1e-3 m");
        require(iterations >= 2, "iterations", iterations, "2 or more");
        require(halvings >= 0 && halvings <= 30, "halvings", halvings, "from 0 to 30");
    }

    private static void require(boolean ok, String what, double found, String allowed) {
        if (!ok) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s, allowed %s", what, found, allowed));
        }
    }

    /**
     * Default settings with the given step [s]. The tolerance goes with the square of the step,
     * since an error e of a displacement is one of e/step2 in the accelerations: 4e-12 m at 1 ms,
     * not below 1e-15 m (rounding), not above 1e-10 m.
     */
    public static Settings ofStep(double step) {
        double tolerance = Math.max(1e-15, Math.min(1e-10, 4e-6 * step * step));
        return new Settings(step, 0.8, tolerance, 12, 12);
    }

    public Settings spectralRadius(double rho) {
        return new Settings(step, rho, tolerance, iterations, halvings);
    }

    public Settings tolerance(double metres) {
        return new Settings(step, spectralRadius, metres, iterations, halvings);
    }
}
