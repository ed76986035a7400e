// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.PinHeight;

/** Numbers of a machine that several checks need. All of them SI. */
final class Bench {
    /** Acceleration of fall, as in the lift's model [m/s²]. */
    static final double GRAVITY = 9.81;

    private Bench() {}

    static double flat(Machine m) {
        return new FoldGeometry(m.lift()).height(m.lift().travel().fold().low());
    }

    static double top(Machine m) {
        return new FoldGeometry(m.lift()).height(m.lift().travel().fold().high());
    }

    /** Angle of the lowest arms at a height of the deck pins [rad]. */
    static double angle(Machine m, double height) {
        return new FoldGeometry(m.lift()).angle(new PinHeight(height));
    }

    /** Weight of all the lift raises, arms not counted [N]. */
    static double deckWeight(Machine m) {
        return m.raisedMass() * GRAVITY;
    }

    static double armWeight(Machine m) {
        return m.armMass() * GRAVITY;
    }
}
