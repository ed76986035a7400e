// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/** Two sections that meet at a wheel, the one that runs on and the one that runs off. */
final class BeltEnds {
    private final BeltSpring first;
    private final double firstArm;
    private final BeltSpring second;
    private final double secondArm;
    final BeltEnds next;

    BeltEnds(
            BeltSpring first, double firstArm, BeltSpring second, double secondArm, BeltEnds next) {
        this.first = first;
        this.firstArm = firstArm;
        this.second = second;
        this.secondArm = secondArm;
        this.next = next;
    }

    /** Torque against the rotor [N m]. */
    double moment() {
        return first.tension * firstArm + second.tension * secondArm;
    }
}
