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
 * touches. The deflection is inverted by three rounds of Newton.
 *
 * <p>The stiffness grows without bound as the last coil closes; where it reaches the stop stiffness
 * the law goes on straight, so force and stiffness stay continuous there too.
 */
public final class ConicalLaw implements SpringLaw {
    private static final int ROUNDS = 3;
    private static final double START_LINEAR = 0.76 + 7.0 / 6;

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
        this.stopEnergy = closingEnergy(uStop / small - 1);
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
        return delta >= travel ? small : small * (1 + openness(delta));
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
        return closingForce(openness(delta));
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
        return closingStiffness(openness(delta));
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
        return closingEnergy(openness(delta));
    }

    @Override
    public void evaluate(double x, SpringPoint out) {
        double delta = free - x;
        if (delta <= touchDeflection || delta >= stopDeflection) {
            out.set(force(x), stiffness(x), energy(x));
            return;
        }
        double s = openness(delta);
        out.set(closingForce(s), closingStiffness(s), closingEnergy(s));
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

    /** Force when coils larger than u = D1 (1 + s) have closed [N]. */
    private double closingForce(double s) {
        double u = small * (1 + s);
        return k / (u * u * u);
    }

    /** Tangent stiffness there [N/m]; u^4 - D1^4 is multiplied out to keep its digits. */
    private double closingStiffness(double s) {
        double power = smallPower4 * s * (4 + s * (6 + s * (4 + s)));
        return 4 * k * taper / (travel * power);
    }

    /** Energy there [J]. */
    private double closingEnergy(double s) {
        double u = small * (1 + s);
        double u2 = 1 / (u * u);
        double l2 = 1 / (large * large);
        double sum = (u2 - l2) / 2 - smallPower4 * (u2 * u2 * u2 - l2 * l2 * l2) / 6;
        return touchEnergy + 0.75 * k * travel / taper * sum;
    }

    /**
     * s = u/D1 - 1 at a deflection. In s the closing part reads
     *
     * <pre>
     *   s^2 (6 + 8 s + 3 s^2)/(1 + s)^3 = 4 W (1 - delta/T)/D1 =: y
     *   left side' = 3 s (4 + 6 s + 4 s^2 + s^3)/(1 + s)^4
     * </pre>
     *
     * which loses no digits as the last coil closes (s to 0). The start is right for small and
     * large s and within 0.7 % between (its 0.76 is fitted, numerically, for s from 1e-4 to 100);
     * Newton then doubles the digits each round: 1e-5, 1e-10, rounding.
     */
    private double openness(double delta) {
        double y = 4 * taper * (1 - delta / travel) / small;
        double p = Math.sqrt(y / 6);
        double s = 2 * p * p + p * (1 + 0.76 * p) / (1 + p * (START_LINEAR + 2.28 * p));
        for (int i = 0; i < ROUNDS; i++) {
            double r = 1 + s;
            double r2 = r * r;
            double left = s * s * (6 + s * (8 + 3 * s)) * r;
            s -= (left - y * r2 * r2) / (3 * s * (4 + s * (6 + s * (4 + s))));
        }
        return s;
    }
}
