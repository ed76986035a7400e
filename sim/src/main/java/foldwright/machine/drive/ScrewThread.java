// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/**
 * A screw thread by its numbers; in a file also by its designation in the table of trapezoidal
 * threads.
 *
 * @param name designation
 * @param majorDiameter major diameter of the screw [m]
 * @param pitchDiameter pitch diameter [m]
 * @param rootDiameter root diameter of the screw [m]
 * @param pitch distance of neighbouring threads [m]
 * @param starts threads side by side
 * @param flankAngle angle of the flank against the plane square to the axis [rad]
 */
@Kind(
        "A screw thread by its numbers; in a file also by its designation in the table of trapezoidal threads.")
public record ScrewThread(
        @Key(value = "Designation", orElse = "given by numbers", example = "Tr10x2") String name,
        @Key(
                        value = "Major diameter of the screw",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 200 mm]",
                        example = "10 mm")
                double majorDiameter,
        @Key(
                        value = "Pitch diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 200 mm]",
                        example = "9 mm")
                double pitchDiameter,
        @Key(
                        value = "Root diameter of the screw",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 200 mm]",
                        example = "7.5 mm")
                double rootDiameter,
        @Key(
                        value = "Distance of neighbouring threads",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "2 mm")
                double pitch,
        @Key(value = "Threads side by side", range = "[1, 20]", orElse = "1", example = "1")
                int starts,
        @Key(
                        value = "Angle of the flank against the plane square to the axis",
                        is = Dimension.ANGLE,
                        range = "[0 deg, 45 deg]",
                        orElse = "15 deg",
                        example = "15 deg")
                double flankAngle) {
    /** Checks every value against its key. */
    public ScrewThread {
        Keys.check(
                ScrewThread.class,
                name,
                majorDiameter,
                pitchDiameter,
                rootDiameter,
                pitch,
                starts,
                flankAngle);
        if (!(rootDiameter < pitchDiameter && pitchDiameter < majorDiameter)) {
            throw new IllegalArgumentException(
                    "ScrewThread: root diameter "
                            + Printed.given(Dimension.LENGTH, rootDiameter)
                            + ", pitch diameter "
                            + Printed.given(Dimension.LENGTH, pitchDiameter)
                            + ", major diameter "
                            + Printed.given(Dimension.LENGTH, majorDiameter)
                            + "; allowed: rising in this order");
        }
    }

    /** Advance of the nut in one turn [m]. */
    public double lead() {
        return pitch * starts;
    }
}
