// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** Blocks of the legs at one place along the rails, as a spring with play across them. */
final class LateralSpring {
    /** Left rail, or both rails where their friction does not depend on their load. */
    final boolean left;

    final double along;
    final double play;
    final double stiffness;

    /** From the bridge's centre of mass [m]. */
    private final double lever;

    /** Where the rail holds this place of the bridge, reversed sign [m]. */
    private final double shift;

    LateralSpring next;

    LateralSpring(BridgeGuide guide, BodyMass bridge, boolean left, GuideBlock block, double k) {
        this.left = left;
        along = block.along();
        play = block.lateralPlay();
        stiffness = k;
        lever = along - bridge.centreY();
        shift = along * guide.squareness() - bridge.centreX();
    }

    double lever() {
        return lever;
    }

    /** Way across the rail of the bridge at these blocks [m]. */
    double way(double xb, double th) {
        return fma(-lever, th, xb + shift);
    }

    /** Way beyond play [m]. */
    double beyond(double way) {
        return way > play ? way - play : way < -play ? way + play : 0;
    }

    /** Force for a way and the damped share of its speed [N]. */
    double force(double way, double dampedSpeed) {
        return stiffness * (beyond(way) + dampedSpeed);
    }
}
