// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.List;

/**
 * Everything the lift needs at one height while it moves.
 *
 * @param at height, direction and speed
 * @param footForce push on the slider ends that moves the lift, springs and all friction of the
 *     linkage counted: power into the linkage over foot speed [N]. Sign: positive pushes the lift
 *     up
 * @param footShares {@code footForce} by cause
 * @param screw most loaded screw
 * @param motor most loaded motor
 * @param motorShares {@code motor.needed} by cause
 * @param parts pins, arms and springs
 */
public record CurvePoint(
        Pose at,
        double footForce,
        Shares footShares,
        ScrewLoad screw,
        MotorLoad motor,
        Shares motorShares,
        Parts parts) {

    /**
     * Where and how the lift moves.
     *
     * @param direction up or down
     * @param height pivot height of the stack, base pin to top pin [m]
     * @param angle arm angle of the lowest stage above horizontal [rad]
     * @param deckSpeed asked for, positive [m/s]
     * @param footTravel from the lowest pose of the curve, positive [m]
     * @param heightPerTravel height gained per foot travel [1]
     */
    public record Pose(
            Direction direction,
            double height,
            double angle,
            double deckSpeed,
            double footTravel,
            double heightPerTravel) {}

    /**
     * Loads by part, in the order of the model.
     *
     * @param pins every pin of both sides
     * @param arms every arm of both sides
     * @param springs every helper spring
     */
    public record Parts(List<PinLoad> pins, List<ArmLoad> arms, List<SpringLoad> springs) {
        public Parts {
            pins = List.copyOf(pins);
            arms = List.copyOf(arms);
            springs = List.copyOf(springs);
        }

        /** Of a lift without helper springs. */
        public Parts(List<PinLoad> pins, List<ArmLoad> arms) {
            this(pins, arms, List.of());
        }

        /** The pin with the largest force; throws when there is none. */
        public PinLoad worstPin() {
            PinLoad worst = pins.get(0);
            for (PinLoad pin : pins) {
                worst = pin.force() > worst.force() ? pin : worst;
            }
            return worst;
        }

        /** The arm with the largest stress; throws when there is none. */
        public ArmLoad worstArm() {
            ArmLoad worst = arms.get(0);
            for (ArmLoad arm : arms) {
                worst = arm.stress() > worst.stress() ? arm : worst;
            }
            return worst;
        }
    }

    /** Pivot height [m]. */
    public double height() {
        return at.height();
    }

    /**
     * Weight left on the deck with friction left out [N]: what the springs do not carry. Below zero
     * they lift the deck, and a latch must hold that force.
     */
    public double residualLoad() {
        double linkage =
                footShares.of(Cause.DECK)
                        + footShares.of(Cause.ARMS)
                        + footShares.of(Cause.SPRINGS);
        return linkage / at.heightPerTravel();
    }

    /** Motor torque available over needed [1]. */
    public double margin() {
        return motor.margin();
    }
}
