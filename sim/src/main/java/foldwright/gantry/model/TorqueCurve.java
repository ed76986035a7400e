// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

import java.util.function.DoubleUnaryOperator;

/**
 * Largest torque of a motor over its speed, tabulated in even steps so that a lookup costs a few
 * nanoseconds. Beyond the last entry the last value holds.
 */
public final class TorqueCurve {
    private static final int STEPS = 256;

    /**
     * Base and slope from each entry to the next, side by side: torque = base + slope times the
     * place in the table.
     */
    private final double[] lines = new double[2 * (STEPS + 1)];

    private final double perSpeed;
    private final double fastest;

    private TorqueCurve(DoubleUnaryOperator law, double fastest) {
        this.fastest = fastest;
        perSpeed = STEPS / fastest;
        double torque = value(law, 0);
        for (int i = 0; i < STEPS; i++) {
            double next = value(law, i + 1);
            lines[2 * i + 1] = next - torque;
            lines[2 * i] = torque - i * lines[2 * i + 1];
            torque = next;
        }
        lines[2 * STEPS] = torque;
    }

    private double value(DoubleUnaryOperator law, int entry) {
        double speed = entry / perSpeed;
        double value = law.applyAsDouble(speed);
        Checks.notNegative("torque at " + speed + " rad/s", value);
        return value;
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
        int line = 2 * (int) place;
        return fma(place, lines[line + 1], lines[line]);
    }
}
