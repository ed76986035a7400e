// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.function.DoubleUnaryOperator;

/**
 * Largest torque of a motor over its speed, tabulated in even steps so that a lookup costs a few
 * nanoseconds. Beyond the last entry the last value holds.
 */
public final class TorqueCurve {
    private static final int STEPS = 256;

    private final double[] torque;
    private final double perSpeed;
    private final double fastest;

    private TorqueCurve(DoubleUnaryOperator law, double fastest) {
        this.fastest = fastest;
        perSpeed = STEPS / fastest;
        torque = new double[STEPS + 2];
        for (int i = 0; i <= STEPS; i++) {
            double value = law.applyAsDouble(i / perSpeed);
            Checks.notNegative("torque at " + i / perSpeed + " rad/s", value);
            torque[i] = value;
        }
        torque[STEPS + 1] = torque[STEPS];
    }

    /**
     * Tabulates a law.
     *
     * @param law speed [rad/s] to torque [N m]
     * @param fastest end of the table [rad/s]
     */
    public static TorqueCurve of(DoubleUnaryOperator law, double fastest) {
        Checks.positive("fastest speed", fastest);
        return new TorqueCurve(law, fastest);
    }

    /** The same torque at every speed [N m]. */
    public static TorqueCurve constant(double value) {
        return new TorqueCurve(speed -> value, 1);
    }

    /** Torque at a speed of either sign [N m]. */
    public double at(double speed) {
        double size = Math.abs(speed);
        double place = (size < fastest ? size : fastest) * perSpeed;
        int i = (int) place;
        return torque[i] + (place - i) * (torque[i + 1] - torque[i]);
    }
}
