// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** Blocks of the legs at one place along the rails, as a spring with play across them. */
final class LateralSpring {
    /** Friction a unit of force on the left and on the right rail. */
    final double rubLeft;

    final double rubRight;
    final double along;
    final double play;
    final double stiffness;

    /** From the bridge's centre of mass [m]. */
    private final double lever;

    private final double minusLever;

    /** Where the rail holds this place of the bridge, reversed sign [m]. */
    private final double shift;

    LateralSpring next;

    LateralSpring(BridgeGuide guide, BodyMass bridge, boolean left, GuideBlock block, double k) {
        rubLeft = left ? guide.frictionCoefficient() : 0;
        rubRight = left ? 0 : guide.frictionCoefficient();
        along = block.along();
        play = block.lateralPlay();
        stiffness = k;
        lever = along - bridge.centreY();
        minusLever = -lever;
        shift = along * guide.squareness() - bridge.centreX();
    }

    double lever() {
        return lever;
    }

    /** Way across the rail of the bridge at these blocks [m]. */
    double way(double xb, double th) {
        return fma(minusLever, th, xb + shift);
    }

    /** Speed across the rail of the bridge at these blocks [m/s]. */
    double speed(double ux, double uyaw) {
        return fma(minusLever, uyaw, ux);
    }

    /** Way beyond play [m]. */
    double beyond(double way) {
        return LegForces.beyond(way, play);
    }

    /** Force for a way and the damped share of its speed [N]. */
    double force(double way, double dampedSpeed) {
        return stiffness * (beyond(way) + dampedSpeed);
    }
}
