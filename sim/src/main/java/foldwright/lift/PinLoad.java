// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What one pin carries at one pose.
 *
 * @param pin name of the pin, see {@link LiftNames}
 * @param along force along the machine, from the fixed to the sliding feet [N]
 * @param up force upward [N]
 * @param pressure force over projected bearing area [Pa]
 */
public record PinLoad(String pin, double along, double up, double pressure) {
    /** Size of the force across the pin [N]. */
    public double force() {
        return Math.hypot(along, up);
    }
}
