// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.elements.motor.MotorFrame;
import foldwright.machine.part.Material;
import foldwright.machine.part.PullOut;
import foldwright.machine.part.PullOutPoints;
import foldwright.machine.part.Rectangle;
import foldwright.machine.part.RectangularTube;
import foldwright.machine.part.Round;
import foldwright.machine.part.RoundTube;
import foldwright.machine.part.Section;
import foldwright.machine.part.SectionByNumbers;
import foldwright.machine.part.Stepper;
import foldwright.machine.part.Winding;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
import java.util.List;

/** Sizes as an order states them. */
final class Sizes {
    private Sizes() {}

    static String length(double metres) {
        return Printed.given(Dimension.LENGTH, metres);
    }

    static String given(Dimension dimension, double si) {
        return Printed.given(dimension, si);
    }

    private static String millimetres(double metres) {
        return length(metres).replace("\u00a0mm", "");
    }

    /** "flat bar 16 × 6 mm, aluminium 6082-T6". */
    static String stock(Section section, Material material) {
        return shape(section) + ", " + name(material);
    }

    /** "steel (carbon, general)": a list goes on after the name of a material. */
    static String name(Material material) {
        int comma = material.name().indexOf(", ");
        return comma < 0
                ? material.name()
                : material.name().substring(0, comma)
                        + " ("
                        + material.name().substring(comma + 2)
                        + ")";
    }

    private static String shape(Section section) {
        if (section instanceof Rectangle r) {
            return "flat bar " + millimetres(r.depth()) + " × " + length(r.width());
        }
        if (section instanceof RectangularTube t) {
            return "rectangular tube "
                    + millimetres(t.depth())
                    + " × "
                    + length(t.width())
                    + ", wall "
                    + length(t.wall());
        }
        if (section instanceof Round r) {
            return "round bar " + length(r.diameter());
        }
        if (section instanceof RoundTube t) {
            return "round tube " + length(t.diameter()) + ", wall " + length(t.wall());
        }
        SectionByNumbers s = (SectionByNumbers) section;
        return "profile " + millimetres(s.depth()) + " × " + length(s.width());
    }

    /** Whether a bar of that section can be ordered by its words alone. */
    static boolean isPlain(Section section) {
        return !(section instanceof SectionByNumbers);
    }

    /** Frame, torque and steps of a motor; the shaft from the table of frames. */
    static String motor(Stepper stepper) {
        StringBuilder words = new StringBuilder("NEMA ICS 16 frame size ");
        words.append(stepper.frameSize());
        MotorFrame.find(stepper.frameSize())
                .ifPresent(
                        f ->
                                words.append(" (face ")
                                        .append(length(f.face().width()))
                                        .append(", shaft ")
                                        .append(length(f.shaftDiameter()))
                                        .append(')'));
        words.append(", holding torque ");
        words.append(given(Dimension.TORQUE, stepper.holdingTorque()));
        words.append(", ").append(stepper.stepsPerTurn()).append(" steps a turn");
        if (stepper.pullOut() instanceof Winding w) {
            words.append(", ").append(given(Dimension.CURRENT, w.current()));
            words.append(" a phase, ").append(given(Dimension.RESISTANCE, w.resistance()));
        }
        if (stepper.mass() > 0) {
            words.append(", ").append(given(Dimension.MASS, stepper.mass()));
        }
        return words.toString();
    }

    /** What is open about a motor. */
    static List<String> motorOpen(PullOut pullOut) {
        return pullOut instanceof PullOutPoints
                ? List.of("current, voltage and driver that give the stated pull-out torque")
                : List.of();
    }
}
