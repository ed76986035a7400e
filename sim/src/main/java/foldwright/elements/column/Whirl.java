// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.column;

import foldwright.elements.Domain;

/**
 * Speed at which a turning round shaft resonates in its first bending mode, omega = (beta L)^2/L^2
 * (d/4)(E/rho)^(1/2): an Euler-Bernoulli beam with its own mass, no thrust, no nut mass.
 *
 * <p>Thrust lowers the speed by about (1 - F/F_crit)^(1/2). Stay below 80 % of it; the metric trade
 * form already holds that factor, so never apply it twice.
 *
 * @param diameter solid diameter, of a screw its root d3 [m]
 * @param length free length between the ends [m]
 * @param youngsModulus E [Pa]
 * @param density rho [kg/m³]
 */
public record Whirl(double diameter, double length, double youngsModulus, double density) {
    /** Share of the critical speed to stay below (trade rule, public screw-maker pages). */
    public static final double USABLE_SHARE = 0.8;

    private static final double INCH = 0.0254;

    public Whirl {
        Domain.positive("shaft diameter", diameter, "m");
        Domain.positive("shaft length", length, "m");
        Domain.positive("Young's modulus", youngsModulus, "Pa");
        Domain.positive("density", density, "kg/m3");
    }

    /** Critical speed from beam theory [rad/s]. */
    public double criticalSpeed(EndFixity ends) {
        double wave = Math.sqrt(youngsModulus / density) * diameter / 4;
        return ends.whirlConstant() * wave / (length * length);
    }

    /**
     * Critical speed with the shaft under thrust, the exact beam result for pinned ends and within
     * some per cent for the others (S. Timoshenko, <i>Vibration Problems in Engineering</i>, axial
     * force in bending vibration, from memory) [rad/s].
     *
     * @param thrust compression [N]
     * @param bucklingLoad Euler load of the same shaft and ends, theory constant [N]
     * @return 0 at and beyond the buckling load
     */
    public double criticalSpeed(EndFixity ends, double thrust, double bucklingLoad) {
        return criticalSpeed(ends) * Math.sqrt(Math.max(0, 1 - thrust / bucklingLoad));
    }

    /** Metric trade form f_c d/L^2 x 10^7 (mm, 1/min) for steel, includes about 0.8 [rad/s]. */
    public double metricTradeSpeed(EndFixity ends) {
        double perMinute = ends.metricTrade() * (diameter * 1e3) / square(length * 1e3) * 1e7;
        return perMinute * Math.PI / 30;
    }

    /** Inch trade form C_s x 4.76e6 d/L^2 (in, 1/min) for steel before its 0.8 [rad/s]. */
    public double inchTradeSpeed(EndFixity ends) {
        double perMinute = ends.inchTrade() * 4.76e6 * (diameter / INCH) / square(length / INCH);
        return perMinute * Math.PI / 30;
    }

    private static double square(double x) {
        return x * x;
    }
}
