// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What one pin carries at one pose.
 *
 * @param pin name of the pin, see {@link LiftNames}
 * @param along force along the machine, from the fixed to the sliding feet [N]
 * @param up force upward [N]
 * @param pressure force over pin diameter times bush length; for ball bearings over diameter times
 *     the spacing of the bearings, for comparison only [Pa]
 * @param use share of what the bearing may carry: pressure over the allowed one of a bush, force
 *     over the static ratings of ball bearings; 0 when the machine file states no limit [1]
 */
public record PinLoad(String pin, double along, double up, double pressure, double use) {
    /** A pin without a stated limit. */
    public PinLoad(String pin, double along, double up, double pressure) {
        this(pin, along, up, pressure, 0);
    }

    /** Size of the force across the pin [N]. */
    public double force() {
        return Math.hypot(along, up);
    }
}
