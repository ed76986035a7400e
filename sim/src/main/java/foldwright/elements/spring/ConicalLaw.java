// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import java.util.Objects;

/**
 * Force of a conical spring of constant pitch whose coils close one after the other, the largest
 * first.
 *
 * <p>With mean diameters D1 &lt; D2, W = D2 - D1, travel of the active coils T = L_a - L_s, and u
 * the largest diameter still free, slicing the wire into rings and closing every ring whose own
 * deflection reaches its share of the travel gives
 *
 * <pre>
 *   while no coil touches:  P = R delta,       R = G d^4 / (2 n (D1 + D2)(D1^2 + D2^2))
 *   afterwards:             P = K / u^3,       K = G d^4 T / (8 n)
 *                       delta = T/W (D2 - 3u/4 - D1^4/(4 u^3))
 *                    dP/ddelta = 4 K W / (T (u^4 - D1^4))
 *                           U = 3KT/(4W) [ (u^-2 - D2^-2)/2 - D1^4 (u^-6 - D2^-6)/6 ]  + U(touch)
 * </pre>
 *
 * The law has the form of E. Rodriguez, M. Paredes, M. Sartor, "Analytical behavior law for a
 * constant pitch conical compression spring", J. Mech. Des. 128 (2006) 1352 (paper not seen;
 * derived again, and checked by slicing). Force and stiffness are continuous where the first coil
 * touches. The deflection is inverted for v = u/D1 from the convex g(v) = 3v + v^-3 by Newton from
 * its right side, which cannot overshoot and takes at most a few rounds.
 *
 * <p>The stiffness grows without bound as the last coil closes; where it reaches the stop stiffness
 * the law goes on straight, so force and stiffness stay continuous there too.
 */
public final class ConicalLaw implements SpringLaw {
    private static final int ROUNDS = 40;

    private final double rate;
    private final double free;
    private final double travel;
    private final double small;
    private final double large;
    private final double smallPower4;
    private final double taper;
    private final double k;
    private final double stopRate;
    private final double touchDeflection;
    private final double touchEnergy;
    private final double stopDeflection;
    private final double stopForce;
    private final double stopEnergy;
    private final double pull;

    ConicalLaw(ConicalSpring spring, Attachment attachment) {
        this.small = spring.smallDiameter();
        this.large = spring.largeDiameter();
        this.taper = large - small;
        this.travel = spring.travel();
        this.free = spring.freeLength();
        this.rate = spring.initialRate();
        this.k = spring.closingConstant();
        this.smallPower4 = small * small * small * small;
        this.pull = Objects.requireNonNull(attachment) == Attachment.ATTACHED ? rate : 0;
        this.touchDeflection = deflection(large);
        this.touchEnergy = rate * touchDeflection * touchDeflection / 2;
        this.stopRate = STOP_RATIO * rate;
        double uStop = Math.pow(smallPower4 + 4 * k * taper / (travel * stopRate), 0.25);
        this.stopDeflection = deflection(uStop);
        this.stopForce = k / (uStop * uStop * uStop);
        this.stopEnergy = closingEnergy(uStop);
    }

    /** R, the rate while no coil touches [N/m]. */
    public double initialRate() {
        return rate;
    }

    /** Length at which the largest coil begins to close [m]. */
    public double touchLength() {
        return free - touchDeflection;
    }

    /** Length below which the law goes on with the stiffness of the stop [m]. */
    public double stopLength() {
        return free - stopDeflection;
    }

    /** Largest mean diameter of a coil still free at that length [m]; D1 once all have closed. */
    public double largestFreeDiameter(double x) {
        double delta = free - x;
        if (delta <= touchDeflection) {
            return large;
        }
        return delta >= travel ? small : diameterAt(delta);
    }

    @Override
    public double force(double x) {
        double delta = free - x;
        if (delta <= touchDeflection) {
            return delta < 0 ? pull * delta : rate * delta;
        }
        if (delta >= stopDeflection) {
            return stopForce + stopRate * (delta - stopDeflection);
        }
        double u = diameterAt(delta);
        return k / (u * u * u);
    }

    @Override
    public double stiffness(double x) {
        double delta = free - x;
        if (delta <= touchDeflection) {
            return delta < 0 ? pull : rate;
        }
        if (delta >= stopDeflection) {
            return stopRate;
        }
        return closingStiffness(diameterAt(delta));
    }

    @Override
    public double energy(double x) {
        double delta = free - x;
        if (delta <= touchDeflection) {
            return (delta < 0 ? pull : rate) * delta * delta / 2;
        }
        if (delta >= stopDeflection) {
            double over = delta - stopDeflection;
            return stopEnergy + over * (stopForce + stopRate * over / 2);
        }
        return closingEnergy(diameterAt(delta));
    }

    @Override
    public void evaluate(double x, SpringPoint out) {
        double delta = free - x;
        if (delta <= touchDeflection || delta >= stopDeflection) {
            out.set(force(x), stiffness(x), energy(x));
            return;
        }
        double u = diameterAt(delta);
        out.set(k / (u * u * u), closingStiffness(u), closingEnergy(u));
    }

    @Override
    public double freeCoordinate() {
        return free;
    }

    @Override
    public double limitCoordinate() {
        return free - travel;
    }

    @Override
    public Measure measure() {
        return Measure.LENGTH;
    }

    /** Deflection when coils larger than u have closed [m]. */
    private double deflection(double u) {
        return travel / taper * (large - 0.75 * u - smallPower4 / (4 * u * u * u));
    }

    /** Tangent stiffness when coils larger than u have closed [N/m]. */
    private double closingStiffness(double u) {
        return 4 * k * taper / (travel * (u * u * u * u - smallPower4));
    }

    /** Energy when coils larger than u have closed [J]. */
    private double closingEnergy(double u) {
        double u2 = 1 / (u * u);
        double l2 = 1 / (large * large);
        double sum = (u2 - l2) / 2 - smallPower4 * (u2 * u2 * u2 - l2 * l2 * l2) / 6;
        return touchEnergy + 0.75 * k * travel / taper * sum;
    }

    /**
     * Solves 3v + v^-3 = y for v = u/D1 >= 1. Near v = 1 the left side is 4 + 6(v-1)^2 - 10(v-1)^3,
     * far away 3v; the start lies on or right of the root, so Newton on the convex function comes
     * down on it.
     */
    private double diameterAt(double delta) {
        double y = 4 * (large - delta * taper / travel) / small;
        double over = Math.max(0, y - 4);
        double v = Math.min(y / 3, 1 + Math.sqrt(over / 6) + over / 3);
        for (int i = 0; i < ROUNDS; i++) {
            double c = 1 / (v * v * v);
            double slope = 3 * (1 - c / v);
            if (!(slope > 0)) {
                break;
            }
            double step = (3 * v + c - y) / slope;
            v -= step;
            if (!(step > 1e-15 * v)) {
                break;
            }
        }
        return Math.max(1, v) * small;
    }
}
