// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/** Blocks of the legs with the same free yaw, as a spring with play in yaw. */
final class YawSpring {
    final double play;
    final double stiffness;
    YawSpring next;

    YawSpring(double play, double stiffness) {
        this.play = play;
        this.stiffness = stiffness;
    }

    /** Yaw beyond play [rad]. */
    double beyond(double yaw) {
        return LegForces.beyond(yaw, play);
    }
}
