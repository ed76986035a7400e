// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * An hour of hold without power, computed in time: whether friction that sticks really stands still
 * or creeps step by step. Wear, shaking and creep of plastics are not in it.
 *
 * @param height pivot height it stands at [m]
 * @param threadFriction in the threads [1]
 * @param drift of the deck after its elastic parts have taken up the load, positive upward; not a
 *     number where a step failed [m]
 */
public record HourHeld(double height, double threadFriction, double drift) {
    /** Movement in an hour that counts as standing still [m]. */
    public static final double ALLOWED = 1e-7;

    /** Whether it stands still. */
    public boolean still() {
        return Math.abs(drift) < ALLOWED;
    }
}
