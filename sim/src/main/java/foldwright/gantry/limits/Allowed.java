// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

/**
 * What is allowed; infinite (tension: 0) where nothing is asked. One component a limit.
 *
 * @param skew end to end of the bridge [m]
 * @param toolError [m]
 * @param leastTension that must stay in every section [N]
 * @param toothHold smallest hold of the belt teeth [1]
 * @param motorMargin available torque over needed torque [1]
 * @param legMoment yaw moment of one leg block [N m]
 * @param legForce side force of one leg block [N]
 * @param carriageMoment yaw moment of one carriage block [N m]
 * @param carriageForce side force of one carriage block [N]
 */
public record Allowed(
        double skew,
        double toolError,
        double leastTension,
        double toothHold,
        double motorMargin,
        double legMoment,
        double legForce,
        double carriageMoment,
        double carriageForce) {
    private static final double NONE = Double.POSITIVE_INFINITY;

    public Allowed {
        positive("skew", skew);
        positive("tool error", toolError);
        positive("motor margin", motorMargin);
        positive("leg block moment", legMoment);
        positive("leg block force", legForce);
        positive("carriage block moment", carriageMoment);
        positive("carriage block force", carriageForce);
        if (!(leastTension >= 0) || !(toothHold >= 0)) {
            throw new IllegalArgumentException(
                    "least tension "
                            + leastTension
                            + " N, tooth hold "
                            + toothHold
                            + "; allowed: 0 or more");
        }
    }

    private static void positive(String what, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " is " + value + "; allowed: above 0");
        }
    }

    /** Taut belts, belts that hold in the teeth, motor margin 1.5; nothing else is asked. */
    public static Allowed running() {
        return new Allowed(NONE, NONE, 0, 1, 1.5, NONE, NONE, NONE, NONE);
    }

    /** The same with a largest skew end to end [m]. */
    public Allowed withSkew(double limit) {
        return new Allowed(
                limit,
                toolError,
                leastTension,
                toothHold,
                motorMargin,
                legMoment,
                legForce,
                carriageMoment,
                carriageForce);
    }

    /** The same with a largest tool error [m]. */
    public Allowed withToolError(double limit) {
        return new Allowed(
                skew,
                limit,
                leastTension,
                toothHold,
                motorMargin,
                legMoment,
                legForce,
                carriageMoment,
                carriageForce);
    }

    /** The same with ratings of the blocks [N m, N]. */
    public Allowed withBlocks(double moment, double force, double carriageM, double carriageF) {
        return new Allowed(
                skew,
                toolError,
                leastTension,
                toothHold,
                motorMargin,
                moment,
                force,
                carriageM,
                carriageF);
    }

    /** The same with another margin of the motors [1]. */
    public Allowed withMotorMargin(double margin) {
        return new Allowed(
                skew,
                toolError,
                leastTension,
                toothHold,
                margin,
                legMoment,
                legForce,
                carriageMoment,
                carriageForce);
    }
}
