// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/** A coordinate as a twice differentiable function of time. */
public interface PrescribedMotion {
    /** Value at time {@code t} [m or rad]. */
    double value(double t);

    /** First derivative [m/s or rad/s]. */
    double rate(double t);

    /** Second derivative [m/s2 or rad/s2]. */
    double acceleration(double t);

    /** Motion {@code start + rate t + acceleration t2/2}. */
    static PrescribedMotion uniform(double start, double rate, double acceleration) {
        return new PrescribedMotion() {
            @Override
            public double value(double t) {
                return start + t * (rate + 0.5 * acceleration * t);
            }

            @Override
            public double rate(double t) {
                return rate + acceleration * t;
            }

            @Override
            public double acceleration(double t) {
                return acceleration;
            }
        };
    }
}
