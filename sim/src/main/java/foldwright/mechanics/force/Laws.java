// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.force;

/** The elementary force laws. */
public final class Laws {
    private Laws() {}

    /**
     * Linear spring and damper: F = -k (x - x0) - d v.
     *
     * @param rate k [N/m or N m/rad]
     * @param free value without force x0 [m or rad]
     * @param damping d [N s/m or N m s/rad]
     */
    public static ForceLaw spring(double rate, double free, double damping) {
        return (value, speed, time, out) -> {
            double stretch = value - free;
            out.loss = -damping * speed;
            out.force = -rate * stretch + out.loss;
            out.stiffness = rate;
            out.damping = damping;
            out.energy = 0.5 * rate * stretch * stretch;
        };
    }

    /**
     * The same spring, merely touched: it pushes when shorter than {@code free} and never pulls.
     */
    public static ForceLaw pushSpring(double rate, double free) {
        return (value, speed, time, out) -> {
            out.clear();
            double squeeze = free - value;
            if (squeeze > 0) {
                out.force = rate * squeeze;
                out.stiffness = rate;
                out.energy = 0.5 * rate * squeeze * squeeze;
            }
        };
    }

    /** Constant force [N or N m], e.g. a drive torque. */
    public static ForceLaw constant(double force) {
        return (value, speed, time, out) -> {
            out.clear();
            out.force = force;
        };
    }
}
