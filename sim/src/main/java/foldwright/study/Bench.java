// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.PinHeight;

/** Numbers of a machine that several checks need. All of them SI. */
final class Bench {
    /** Standard acceleration of fall, ISO 80000-3 [m/s²]. */
    static final double GRAVITY = 9.80665;

    private Bench() {}

    /** Height of the deck pins above the base pins at an opening [m]. */
    static double height(Machine m, Opening opening) {
        if (opening instanceof ArmAngle a) {
            return m.lift().stages() * m.lift().arm().length() * Math.sin(a.angle());
        }
        return ((PinHeight) opening).height();
    }

    static double flat(Machine m) {
        return height(m, m.lift().travel().fold().low());
    }

    static double top(Machine m) {
        return height(m, m.lift().travel().fold().high());
    }

    /** Arm angle at a height of the deck pins [rad]. */
    static double angle(Machine m, double height) {
        return Math.asin(height / (m.lift().stages() * m.lift().arm().length()));
    }

    /** Weight of all the lift raises, arms not counted [N]. */
    static double deckWeight(Machine m) {
        return m.raisedMass() * GRAVITY;
    }

    static double armWeight(Machine m) {
        return m.armMass() * GRAVITY;
    }
}
