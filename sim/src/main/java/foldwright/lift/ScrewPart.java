// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.drive.ScrewLine;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.ScalarRow;

/**
 * One screw in a mechanism, seen as the distance between its bearing and its nut.
 *
 * @param name see {@link LiftNames}
 * @param line its description
 * @param length distance from bearing to nut [m]
 * @param sense +1 if the nut moves away from the bearing as the lift rises (the screw pushes), -1
 *     if it comes nearer (the screw pulls)
 * @param row row whose multiplier is the axial force: driver or screw coupling
 */
record ScrewPart(String name, ScrewLine line, Coordinate length, int sense, ScalarRow row) {
    /** Force on the nut in the raising sense, from the multiplier of {@link #row} [N]. */
    double raisingForce(double multiplier) {
        return sense * multiplier;
    }
}
