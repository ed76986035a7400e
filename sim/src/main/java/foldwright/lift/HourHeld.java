// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.mechanics.solve.Failure;
import java.util.Optional;

/**
 * An hour of hold without power, computed in time: whether friction that sticks really stands still
 * or creeps step by step. Wear, shaking and creep of plastics are not in it.
 *
 * @param height pivot height it stands at [m]
 * @param threadFriction in the threads [1]
 * @param drift of the deck after its elastic parts have taken up the load, positive upward; not a
 *     number where a step failed [m]
 * @param failure of the step that failed, where one did
 */
public record HourHeld(
        double height, double threadFriction, double drift, Optional<Failure> failure) {
    /** Movement in an hour that counts as standing still [m]. */
    public static final double ALLOWED = 1e-7;

    public HourHeld {
        if (failure.isPresent() != Double.isNaN(drift)) {
            throw new IllegalArgumentException("drift " + drift + " with failure " + failure);
        }
    }

    static HourHeld moved(double height, double threadFriction, double drift) {
        return new HourHeld(height, threadFriction, drift, Optional.empty());
    }

    static HourHeld broken(double height, double threadFriction, Failure failure) {
        return new HourHeld(height, threadFriction, Double.NaN, Optional.of(failure));
    }

    /** Whether it was solved to its end and stands still. */
    public boolean still() {
        return Math.abs(drift) < ALLOWED;
    }
}
