// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import java.util.Objects;

/**
 * Force of a gas spring over its length: the gas is squeezed as the rod moves in by the stroke s,
 *
 * <pre>
 *   F = F1 (1 - c s/S)^-n,   c = 1 - 1/(slow rise F2/F1)
 *   U = F1 S/(c (n - 1)) [ (1 - c s/S)^(1-n) - 1 ],   or -F1 S/c ln(1 - c s/S) for n = 1
 * </pre>
 *
 * where c is the share of the gas volume that the rod takes at full stroke. n = 1 when the gas has
 * time to take the temperature of the wall, 1.4 (nitrogen) when it has not; ideal gas, pressure of
 * the air left out (it is 1 % of the filling or less).
 *
 * <p>At full extension the piston rests on its own stop with the force F1 behind it. That seat is
 * given the stiffness {@link #SEAT_RATIO} F1/S, so the force falls from F1 to zero over the last
 * 1/500 of the stroke instead of jumping; the gas then works from the inner end of that zone. An
 * attached spring pulled beyond its length hangs on the same seat. Seal friction is not in the law:
 * it depends on the direction of motion, see {@link GasSpring#sealFriction()}.
 */
public final class GasLaw implements SpringLaw {
    /** Stiffness of the extension stop in units of F1 over stroke; numerical choice, no source. */
    public static final double SEAT_RATIO = 500;

    /** Exponent less one from which the plain power form keeps some 14 digits. */
    private static final double SURELY_POLYTROPIC = 0.01;

    private final double extended;
    private final double shortest;
    private final double knee;
    private final double firstForce;
    private final double seatRate;
    private final double seatEnergy;
    private final double share;
    private final double exponent;
    private final double stopRate;
    private final double limitForce;
    private final double limitEnergy;
    private final boolean pulls;

    GasLaw(GasSpring spring, Attachment attachment) {
        this.extended = spring.extendedLength();
        this.shortest = spring.extendedLength() - spring.stroke();
        this.firstForce = spring.extendedForce();
        this.seatRate = SEAT_RATIO * firstForce / spring.stroke();
        this.knee = extended - firstForce / seatRate;
        this.seatEnergy = firstForce * firstForce / (2 * seatRate);
        this.share = spring.volumeShare() / spring.stroke();
        this.exponent = spring.exponent();
        this.pulls = Objects.requireNonNull(attachment) == Attachment.ATTACHED;
        this.limitForce = gasForce(knee - shortest);
        this.limitEnergy = seatEnergy + gasEnergy(knee - shortest);
        this.stopRate = STOP_RATIO * firstForce / spring.stroke();
    }

    /** Length below which the gas carries, F1/seat stiffness short of the extended length [m]. */
    public double seatLength() {
        return knee;
    }

    @Override
    public double force(double x) {
        if (x >= knee) {
            return x > extended && !pulls ? 0 : seatRate * (extended - x);
        }
        return x >= shortest ? gasForce(knee - x) : limitForce + stopRate * (shortest - x);
    }

    @Override
    public double stiffness(double x) {
        if (x > knee) {
            return x > extended && !pulls ? 0 : seatRate;
        }
        if (x < shortest) {
            return stopRate;
        }
        double open = 1 - share * (knee - x);
        return gasForce(knee - x) * exponent * share / open;
    }

    @Override
    public double energy(double x) {
        if (x >= knee) {
            double push = extended - x;
            return push < 0 && !pulls ? 0 : seatRate * push * push / 2;
        }
        if (x >= shortest) {
            return seatEnergy + gasEnergy(knee - x);
        }
        double over = shortest - x;
        return limitEnergy + over * (limitForce + stopRate * over / 2);
    }

    @Override
    public void evaluate(double x, SpringPoint out) {
        if (x >= knee || x < shortest || share == 0) {
            out.set(force(x), stiffness(x), energy(x));
            return;
        }
        double stroke = knee - x;
        double force = gasForce(stroke);
        double slope = force * exponent * share / (1 - share * stroke);
        out.set(force, slope, seatEnergy + gasEnergy(stroke));
    }

    private double gasForce(double stroke) {
        double open = 1 - share * stroke;
        return exponent == 1 ? firstForce / open : firstForce * Math.pow(open, -exponent);
    }

    private double gasEnergy(double stroke) {
        if (share == 0) {
            return firstForce * stroke;
        }
        double power = exponent - 1;
        double open = 1 - share * stroke;
        if (power > SURELY_POLYTROPIC) {
            return (gasForce(stroke) * open - firstForce) / (share * power);
        }
        // towards n = 1 the difference above loses its digits and this form does not
        double log = Math.log(open);
        double sum = power == 0 ? -log : Math.expm1(-power * log) / power;
        return firstForce / share * sum;
    }

    @Override
    public double freeCoordinate() {
        return extended;
    }

    @Override
    public double limitCoordinate() {
        return shortest;
    }

    @Override
    public Measure measure() {
        return Measure.LENGTH;
    }
}
