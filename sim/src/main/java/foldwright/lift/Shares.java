// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.Arrays;

/**
 * A force or torque split by cause; the shares add up to the whole.
 *
 * <p>A share is the power its cause takes, divided by the speed of the point where the whole is
 * measured: exact at the pose, not an attribution by switching causes off. Negative shares help
 * (springs, a sinking deck). Immutable.
 */
public final class Shares {
    /** Nothing of anything. */
    public static final Shares NONE = new Shares(new double[Cause.values().length]);

    private final double[] parts;

    private Shares(double[] parts) {
        this.parts = parts;
    }

    /** A copy with the share of one cause replaced. */
    public Shares with(Cause cause, double share) {
        double[] changed = parts.clone();
        changed[cause.ordinal()] = share;
        return new Shares(changed);
    }

    /**
     * Powers [W] by cause, in the order of {@link Cause}, over a speed: the shares at that speed.
     */
    static Shares ofPowers(double[] powers, double speed) {
        double[] parts = new double[powers.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = powers[i] / speed;
        }
        return new Shares(parts);
    }

    /** The share of one cause, in the unit of the whole. */
    public double of(Cause cause) {
        return parts[cause.ordinal()];
    }

    /** Sum of all shares: the whole. */
    public double total() {
        double sum = 0;
        for (double part : parts) {
            sum += part;
        }
        return sum;
    }

    /** Linear mix with another split, weight 0 gives this, 1 the other. */
    Shares mixedWith(Shares other, double weight) {
        double[] mix = new double[parts.length];
        for (int i = 0; i < mix.length; i++) {
            mix[i] = parts[i] + weight * (other.parts[i] - parts[i]);
        }
        return new Shares(mix);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Shares other && Arrays.equals(parts, other.parts);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts);
    }

    @Override
    public String toString() {
        return Arrays.toString(parts);
    }
}
