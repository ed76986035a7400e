// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * The names parts of a lift carry in results, pictures and messages.
 *
 * <p>Sides are called "front" and "back" as in the machine file; stages count from the bottom, from
 * 1; pins above the feet too, from 1 at the base to n + 1 at the deck.
 */
public final class LiftNames {
    private LiftNames() {}

    /** One of the two scissor sides; left and right seen from the fixed feet along the machine. */
    public enum Side {
        /** At positive y. */
        LEFT("back"),
        /** At negative y. */
        RIGHT("front");

        private final String label;

        Side(String label) {
            this.label = label;
        }

        /** The word used in names. */
        public String label() {
            return label;
        }

        /** The side of the machine file. */
        static Side of(foldwright.machine.linkage.Side side) {
            return side == foldwright.machine.linkage.Side.FRONT ? RIGHT : LEFT;
        }
    }

    /** Arm that rises from the fixed end towards the sliding end. */
    public static String risingArm(Side side, int stage) {
        return side.label + " arm " + stage + " rising";
    }

    /** Arm that falls from the fixed end towards the sliding end. */
    public static String fallingArm(Side side, int stage) {
        return side.label + " arm " + stage + " falling";
    }

    /** Pin at the crossing of a stage. */
    public static String centrePin(Side side, int stage) {
        return side.label + " centre pin " + stage;
    }

    /** Pin above the fixed feet; level 0 is the base pin, level n the deck pin. */
    public static String fixedPin(Side side, int level) {
        return side.label + " fixed-side pin " + (level + 1);
    }

    /** Pin above the sliding feet; level 0 is the foot pin, level n the deck's. */
    public static String slidingPin(Side side, int level) {
        return side.label + " sliding-side pin " + (level + 1);
    }

    /** The block that slides on the base. */
    public static String footSlider(Side side) {
        return side.label + " foot slider";
    }

    /** The block that slides under the deck. */
    public static String deckSlider(Side side) {
        return side.label + " deck slider";
    }

    /** Screw number i, from 1. */
    public static String screw(int number) {
        return "screw " + number;
    }

    /** Nut of screw number i, from 1. */
    public static String nut(int number) {
        return "nut " + number;
    }

    /** Motor number i, from 1. */
    public static String motor(int number) {
        return "motor " + number;
    }

    /** Spring number i, from 1, of a group of equal springs. */
    public static String spring(String group, int number) {
        return group + " " + number;
    }

    /** The plate that is raised. */
    public static String deck() {
        return "deck";
    }
}
