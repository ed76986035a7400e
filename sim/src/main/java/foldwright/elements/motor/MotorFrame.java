// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Mounting face of a stepper frame size after NEMA ICS 16 (table {@code motor_frames.csv}).
 *
 * @param size frame size, e.g. 17
 * @param face the square face with its four screws
 * @param pilotDiameter [m]
 * @param pilotDepth greatest depth of the pilot [m]
 * @param shaftDiameter [m]
 * @param source where the row comes from
 */
public record MotorFrame(
        int size,
        Face face,
        double pilotDiameter,
        double pilotDepth,
        double shaftDiameter,
        String source) {

    /**
     * The face.
     *
     * @param width side of the square [m]
     * @param holeSpacing between neighbouring screws [m]
     * @param boltCircle through all four screws [m]
     * @param thread as the trade fits it
     */
    public record Face(double width, double holeSpacing, double boltCircle, String thread) {}

    /** The frame of that size, or empty. */
    public static Optional<MotorFrame> find(int size) {
        return Shipped.CATALOG.find(Integer.toString(size));
    }

    /**
     * The frame of that size.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest sizes
     */
    public static MotorFrame get(int size) {
        return Shipped.CATALOG.get(Integer.toString(size));
    }

    /** All frames by their size. */
    public static Catalog<MotorFrame> catalog() {
        return Shipped.CATALOG;
    }

    private static MotorFrame of(Table.Row row) {
        return new MotorFrame(
                row.whole("frame_size"),
                new Face(
                        row.number("face_width_mm", MILLI),
                        row.number("hole_spacing_mm", MILLI),
                        row.number("bolt_circle_mm", MILLI),
                        row.text("face_thread")),
                row.number("pilot_dia_mm", MILLI),
                row.number("pilot_depth_max_mm", MILLI),
                row.number("shaft_dia_mm", MILLI),
                row.text("source"));
    }

    /** Read when the first frame is asked for. */
    private static final class Shipped {
        private static final Catalog<MotorFrame> CATALOG =
                Catalog.of(
                        "motor frame",
                        entries(),
                        frame -> Integer.toString(frame.size()),
                        name -> name.strip().toLowerCase(Locale.ROOT));

        private static List<MotorFrame> entries() {
            return Table.shipped("motor_frames.csv").rows().stream().map(MotorFrame::of).toList();
        }
    }
}
