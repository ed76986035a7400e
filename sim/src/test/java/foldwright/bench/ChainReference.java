// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * True motion of the chain of four-bar windows: all N + 1 cranks stay parallel and the couplers
 * only travel, so it is a pendulum of one angle,
 *
 * <pre>
 *     ((N + 1) / 3 + N) phi'' = -g ((N + 1) / 2 + N) cos phi,   phi(0) = pi/2, phi'(0) = -1 rad/s
 * </pre>
 *
 * for links of 1 kg and 1 m; solved to 1e-12 by Dormand and Prince's 8(5,3) method of the library.
 */
final class ChainReference {
    private ChainReference() {}

    /** Angle of the cranks from the horizontal [rad]. */
    static double angle(int loops, double time) {
        double inertia = (loops + 1) / 3.0 + loops;
        double weight = 9.81 * ((loops + 1) / 2.0 + loops);
        FirstOrderDifferentialEquations pendulum =
                new FirstOrderDifferentialEquations() {
                    @Override
                    public int getDimension() {
                        return 2;
                    }

                    @Override
                    public void computeDerivatives(double t, double[] y, double[] rate) {
                        rate[0] = y[1];
                        rate[1] = -weight / inertia * Math.cos(y[0]);
                    }
                };
        double[] y = {Math.PI / 2, -1};
        new DormandPrince853Integrator(1e-9, 0.1, 1e-12, 1e-12).integrate(pendulum, 0, y, time, y);
        return y[0];
    }
}
