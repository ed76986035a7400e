// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import java.util.Objects;

/**
 * Pull-out torque from electrical data: the largest i_q with |i| at most the chopper's amplitude
 * I_p and |v| at most the bridge's amplitude V, i_d free (the load angle makes it).
 *
 * <p>In the rotor frame at steady speed
 *
 * <pre>
 *   v_d = R i_d - X i_q            X = N_r omega L
 *   v_q = R i_q + X i_d + k_t omega       T = k_t i_q
 * </pre>
 *
 * so |v| = V is a circle of radius V/Z around (-E X, -E R)/Z^2 with Z^2 = R^2 + X^2 and E = k_t
 * omega, and |i| = I_p one around the origin. The answer is the highest point of their overlap.
 * Without current limit it is the phasor result k_t [V/Z - E R/Z^2].
 *
 * <p>Left out: iron loss, saturation, friction of the motor, mid-range instability; measured curves
 * lie lower, by some 10 to 30 % (no source). Ask margin 1.5 to 2 on it.
 */
public final class ElectricalPullOut implements PullOut {
    private final HybridStepper motor;
    private final StepperDrive drive;
    private final double kt;
    private final double fastest;

    /** Curve of a motor on a drive. */
    public ElectricalPullOut(HybridStepper motor, StepperDrive drive) {
        this.motor = Objects.requireNonNull(motor, "motor");
        this.drive = Objects.requireNonNull(drive, "drive");
        this.kt = motor.torqueConstant();
        this.fastest = zeroTorqueSpeed();
    }

    @Override
    public double torque(double speed) {
        double w = Math.abs(speed);
        double r = motor.resistance();
        double x = motor.reactance(w);
        double e = kt * w;
        double z2 = r * r + x * x;
        double cd = -e * x / z2;
        double cq = -e * r / z2;
        double rho = drive.voltageAmplitude() / Math.sqrt(z2);
        double limit = drive.currentAmplitude();
        return Math.max(0, kt * highestPoint(cd, cq, rho, limit));
    }

    /** Largest i_q in the overlap of the disk (cd, cq; rho) with the disk (0, 0; limit) [A]. */
    private static double highestPoint(double cd, double cq, double rho, double limit) {
        double topQ = cq + rho;
        if (cd * cd + topQ * topQ <= limit * limit) {
            return topQ;
        }
        double offQ = limit - cq;
        if (cd * cd + offQ * offQ <= rho * rho) {
            return limit;
        }
        double c2 = cd * cd + cq * cq;
        double c = Math.sqrt(c2);
        if (c > rho + limit) {
            return 0;
        }
        // both circles cross: along = distance of the chord from the origin, towards the centre
        double along = (c2 + limit * limit - rho * rho) / (2 * c);
        double half2 = limit * limit - along * along;
        double half = Math.sqrt(Math.max(0, half2));
        return along * cq / c + half * Math.abs(cd) / c;
    }

    /** Pull-out torque with the voltage limit alone, k_t [V/Z - E R/Z^2] [N·m]; may be negative. */
    public double voltageOnlyTorque(double speed) {
        double w = Math.abs(speed);
        double r = motor.resistance();
        double x = motor.reactance(w);
        double z2 = r * r + x * x;
        return kt * (drive.voltageAmplitude() / Math.sqrt(z2) - kt * w * r / z2);
    }

    /**
     * Speed up to which the full current flows with i_d = 0, from (X I)^2 + (R I + k_t w)^2 = V^2
     * [rad/s]; 0 if the supply cannot drive the current even at rest.
     */
    public double cornerSpeed() {
        double i = drive.currentAmplitude();
        double ri = motor.resistance() * i;
        double v = drive.voltageAmplitude();
        if (ri >= v) {
            return 0;
        }
        double xi = motor.reactance(1) * i;
        double a = xi * xi + kt * kt;
        double b = ri * kt;
        return (Math.sqrt(b * b + a * (v * v - ri * ri)) - b) / a;
    }

    @Override
    public double fastest() {
        return fastest;
    }

    /** Speed where V Z = E R, found by bisection; infinite if the torque never falls to zero. */
    private double zeroTorqueSpeed() {
        double high = Math.max(1, cornerSpeed());
        int doublings = 0;
        while (torque(high) > 0) {
            high *= 2;
            if (++doublings > 40) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double low = 0;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (torque(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
