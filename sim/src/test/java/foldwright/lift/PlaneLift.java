// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * A plane scissor stack as a test describes it: one plane carries the whole load.
 *
 * @param stages number of X shapes one above the other
 * @param arm arm length pivot to pivot, centre pin in the middle [m]
 * @param armWeight weight of one arm, acting at its middle [N]
 * @param load weight on the deck [N]
 * @param loadAt where the load acts, fraction of the span from the left
 * @param friction the friction of pins and feet
 * @param springs the helper springs
 */
record PlaneLift(
        int stages,
        double arm,
        double armWeight,
        double load,
        double loadAt,
        Friction friction,
        Springs springs) {

    /**
     * Dry friction everywhere.
     *
     * @param pin coefficient in the pins [1]
     * @param pinRadius radius of every pin [m]
     * @param foot coefficient of the base slider [1]
     * @param deckSlider coefficient of the deck slider [1]
     */
    record Friction(double pin, double pinRadius, double foot, double deckSlider) {
        static final Friction NONE = new Friction(0, 0, 0, 0);
    }

    /**
     * Spring loads at this pose.
     *
     * @param deck upward force between base and deck [N]
     * @param deckAt where it acts, fraction of the span from the left
     * @param foot force pushing the foot inward [N]
     * @param pin torque raising the rising arm at its base pin [N·m]
     */
    record Springs(double deck, double deckAt, double foot, double pin) {
        static final Springs NONE = new Springs(0, 0.5, 0, 0);
    }

    static PlaneLift plain(int stages, double arm, double armWeight, double load, double loadAt) {
        return new PlaneLift(stages, arm, armWeight, load, loadAt, Friction.NONE, Springs.NONE);
    }

    PlaneLift with(Friction other) {
        return new PlaneLift(stages, arm, armWeight, load, loadAt, other, springs);
    }

    PlaneLift with(Springs other) {
        return new PlaneLift(stages, arm, armWeight, load, loadAt, friction, other);
    }
}
