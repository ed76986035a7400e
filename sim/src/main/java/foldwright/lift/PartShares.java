// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every pin and arm carries at one height while the lift moves, split by cause.
 *
 * <p>At the solved pose the balance is linear in weights, spring forces and friction forces, so
 * each of them has a pin force and a bending moment of its own. A share of a pin is the part of its
 * cause's force along the direction of the whole force; a share of an arm is its cause's bending
 * moment on the side of the centre pin where the whole is largest. Shares add up to the whole;
 * negative ones relieve the part. Motion is slow and steady: inertia has no share.
 *
 * @param height pivot height [m]
 * @param direction the way the lift moves
 * @param pins force of every pin by its name [N]
 * @param arms bending moment of every arm by its name [N·m]
 */
public record PartShares(
        double height, Direction direction, Map<String, Split> pins, Map<String, Split> arms) {
    public PartShares {
        pins = Map.copyOf(pins);
        arms = Map.copyOf(arms);
    }

    /**
     * A piece of a whole.
     *
     * @param cause its kind; {@link Cause#PINS} and {@link Cause#GUIDES} are their friction, {@link
     *     Cause#WIND_UP} what joints carry without any load, such as screws that fight
     * @param name what it comes from, as the machine file calls it
     * @param value its part of the whole, in the unit of the whole
     */
    public record Share(Cause cause, String name, double value) {}

    /**
     * A whole and its pieces.
     *
     * @param total not negative [N or N·m]
     * @param shares they add up to {@code total}
     */
    public record Split(double total, List<Share> shares) {
        public Split {
            shares = List.copyOf(shares);
        }
    }

    /** The force of a pin by its name, see {@link LiftNames}. */
    public Optional<Split> pin(String name) {
        return Optional.ofNullable(pins.get(name));
    }

    /** The bending moment of an arm at its centre pin by its name. */
    public Optional<Split> arm(String name) {
        return Optional.ofNullable(arms.get(name));
    }
}
