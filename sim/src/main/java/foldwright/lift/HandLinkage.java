// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static foldwright.lift.HandSum.degrees;
import static foldwright.lift.HandSum.mm;
import static foldwright.lift.HandSum.newton;
import static foldwright.lift.HandSum.number;

/**
 * Hand sums of the scissor linkage: height, foot force, speed ratio, pin friction and locking.
 *
 * <p>All hold for equal arms with the centre pin in the middle, driven at the feet. Symbols: n
 * stages, L arm length pivot to pivot, θ arm angle above horizontal, h = L sin θ height of one
 * stage, H = n h pivot height of the stack, W weight of the deck and all on it, Wa weight of all
 * arms and pins, μ friction coefficient in the pins, r pin radius.
 */
public final class HandLinkage {
    private final int stages;
    private final double arm;
    private final double angle;

    /**
     * @param stages number of stages, at least 1
     * @param arm arm length pivot to pivot [m]
     * @param angle arm angle above horizontal, between 0 and π/2 [rad]
     */
    public HandLinkage(int stages, double arm, double angle) {
        if (stages < 1 || !(arm > 0) || !(angle > 0 && angle < Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "needs a stage, an arm and an angle between 0 and 90°, got "
                            + stages
                            + " stages, arm "
                            + arm
                            + " m, angle "
                            + angle
                            + " rad");
        }
        this.stages = stages;
        this.arm = arm;
        this.angle = angle;
    }

    /** The same stack at the pose with pivot height {@code height} [m]. */
    public static HandLinkage atHeight(int stages, double arm, double height) {
        return new HandLinkage(stages, arm, Math.asin(height / (stages * arm)));
    }

    /** H = n L sin θ [m]. */
    public HandSum height() {
        double value = stages * arm * Math.sin(angle);
        return new HandSum(
                "Pivot height of the stack",
                "H = n L sin θ",
                stages + " × " + mm(arm) + " × sin " + degrees(angle),
                value,
                mm(value),
                "Equal arms, centre pin in the middle, no play.",
                "Pythagoras");
    }

    /**
     * F = n (W + Wa/2 - S)/tan θ: what the feet must be pushed with, friction left out [N].
     *
     * @param deck W, weight the top carries [N]
     * @param arms Wa, weight of all arms and pins [N]
     * @param springs S, upward force of springs between base and deck [N]
     */
    public HandSum footForce(double deck, double arms, double springs) {
        double value = stages * (deck + arms / 2 - springs) / Math.tan(angle);
        boolean sprung = springs != 0;
        return new HandSum(
                "Force at the feet, friction left out",
                sprung ? "F = n (W + Wa/2 - S)/tan θ" : "F = n (W + Wa/2)/tan θ",
                stages
                        + " × ("
                        + newton(deck)
                        + " + "
                        + newton(arms)
                        + "/2"
                        + (sprung ? " - " + newton(springs) : "")
                        + ")/tan "
                        + degrees(angle),
                value,
                newton(value),
                "Slow motion, no friction; the place of the load on the deck does not matter.",
                "Virtual work; one-stage form: teaching page on scissor equations, 2012. Layout as"
                        + " in H. M. Spackman, Mathematical Analysis of Scissor Lifts, NOSC TD"
                        + " 1550, June 1989");
    }

    /** dH/dx = n/tan θ: height gained per foot travel [1]. */
    public HandSum heightPerFootTravel() {
        double value = stages / Math.tan(angle);
        return new HandSum(
                "Height gained per foot travel",
                "dH/dx = n/tan θ",
                stages + "/tan " + degrees(angle),
                value,
                number(value) + " mm per mm",
                "Force, speed, step size, play and side error all carry this factor.",
                "Derivative of H = n L sin θ and x = L cos θ");
    }

    /**
     * By how much pin friction multiplies the foot force: (ρ^n - 1)/(8 n q), q = μ r/h, ρ = (1 +
     * 4q)/(1 - 4q) [1]; infinite where the stage locks.
     */
    public HandSum pinFrictionFactor(double friction, double pinRadius) {
        double h = arm * Math.sin(angle);
        double q = friction * pinRadius / h;
        double rho = (1 + 4 * q) / (1 - 4 * q);
        double value =
                q == 0
                        ? 1
                        : q >= 0.25
                                ? Double.POSITIVE_INFINITY
                                : (Math.pow(rho, stages) - 1) / (8 * stages * q);
        return new HandSum(
                "Foot force multiplied by pin friction",
                "q = μ r/h, ρ = (1 + 4q)/(1 - 4q), factor = (ρ^n - 1)/(8 n q)",
                "q = "
                        + number(friction)
                        + " × "
                        + mm(pinRadius)
                        + "/"
                        + mm(h)
                        + " = "
                        + number(q)
                        + ", ρ = "
                        + number(rho)
                        + ", factor",
                value,
                number(value),
                "Weightless arms, thrust far above the deck weight: good to 1 % near flat, read"
                        + " the model higher up.",
                "Own derivation from the friction circle of every pin");
    }

    /** h = 4 μ r: the stage height below which no push raises the stage [m]. */
    public static HandSum lockHeight(double friction, double pinRadius) {
        double value = 4 * friction * pinRadius;
        return new HandSum(
                "Stage height at which the pins lock",
                "h = 4 μ r",
                "4 × " + number(friction) + " × " + mm(pinRadius),
                value,
                mm(value),
                "Weightless arms. Keep the flat stage at least three times as high (common"
                        + " practice, no source).",
                "Own derivation from the friction circle of every pin");
    }

    /** dH = n dL/sin θ: how much higher one side stands when its arms are longer by dL [m]. */
    public HandSum sideErrorFromArmLength(double longer) {
        double value = stages * longer / Math.sin(angle);
        return new HandSum(
                "Side height error from arm length",
                "dH = n dL/sin θ",
                stages + " × " + mm(longer) + "/sin " + degrees(angle),
                value,
                mm(value),
                "Feet held at the same place on both sides, sides free of each other.",
                "Derivative of H = n √(L² - x²)");
    }

    /** dH = e n/tan θ: side height difference when one foot is ahead by e [m]. */
    public HandSum sideErrorFromFoot(double ahead) {
        double value = stages * ahead / Math.tan(angle);
        return new HandSum(
                "Side height difference from a foot ahead",
                "dH = e n/tan θ",
                mm(ahead) + " × " + stages + "/tan " + degrees(angle),
                value,
                mm(value),
                "Sides free of each other; a stiff deck turns it into a twisting load instead.",
                "Derivative of H = n L sin θ and x = L cos θ");
    }
}
