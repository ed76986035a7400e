// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.beam.Beam;
import foldwright.elements.beam.Section;
import foldwright.elements.beam.Section.Bending;
import foldwright.elements.material.Material;
import java.util.ArrayList;
import java.util.List;

/** Arms as beams: bending, torsion, creep of a printed arm. */
public final class BeamChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double MM4 = 1e-12;
    private static final double MPA = 1e6;

    @Override
    public String title() {
        return "Beams and arms";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        Section solid = new Section.Rectangle(20 * MM, 6 * MM);
        values.addAll(
                cantilever(
                        "solid 20 x 6, 120 long, 10 N at 15",
                        beam(solid, 120, Material.get("PLA, printed")),
                        10,
                        15 * MM,
                        new double[] {
                            360, 1168.02, 5.33333, 66.6667, 10, 14.0097, 0.7375, 0.210145, 1.875
                        }));
        Section square = new Section.RectangularTube(20 * MM, 20 * MM, 1.5 * MM);
        values.addAll(
                cantilever(
                        "tube 20 x 20 x 1.5, 250 long, 15 N at 30",
                        beam(square, 250, Material.get("aluminium 6082-T6")),
                        15,
                        30 * MM,
                        new double[] {
                            6373.25, 9497.44, 0.175118, 1.05071, 5.88397, 0.450392, 0.438276,
                            0.0135117, 85.6565
                        }));
        Section flat = new Section.RectangularTube(30 * MM, 15 * MM, 2 * MM);
        values.addAll(
                cantilever(
                        "tube 30 x 15 x 2, 300 long, 20 N at 40",
                        beam(flat, 300, Material.get("aluminium 6061-T6")),
                        20,
                        40 * MM,
                        new double[] {
                            5553.67, 12926.4, 0.470407, 2.35203, 8.10275, 0.7141, 0.549451,
                            0.028564, 42.5164
                        }));
        values.addAll(rectangles());
        values.addAll(creep(solid));
        return values;
    }

    private static Beam beam(Section section, double lengthMm, Material material) {
        return new Beam(section, lengthMm * MM, material.youngsModulus(), material.shearModulus());
    }

    /**
     * {@code published}: I, J mm4, tip mm, slope mrad, root stress MPa, twist mrad, torsion stress
     * MPa, drop at the offset mm, tip stiffness N/mm.
     */
    private static List<ProofValue> cantilever(
            String name, Beam beam, double force, double offset, double[] published) {
        Bending down = Bending.ALONG_HEIGHT;
        double torque = force * offset;
        Section section = beam.section();
        return new Comparison(
                        "cantilever " + name,
                        1e-3,
                        "recomputed independently; Euler-Bernoulli, Bredt, Roark (from memory)")
                .value("I", section.secondMoment(down) / MM4, published[0], "mm4")
                .value("J", section.torsionConstant() / MM4, published[1], "mm4")
                .value("tip deflection", beam.tipDeflection(force, down) / MM, published[2], "mm")
                .value("tip slope", beam.tipSlope(force, down) / MM, published[3], "mrad")
                .value("root stress", beam.rootStress(force, down) / MPA, published[4], "MPa")
                .value("twist", beam.twist(torque) / MM, published[5], "mrad")
                .value("torsion stress", torsionStress(section, torque) / MPA, published[6], "MPa")
                .value("drop by twist", beam.twist(torque) * offset / MM, published[7], "mm")
                .value("tip stiffness", beam.tipStiffness(down) * MM, published[8], "N/mm")
                .values();
    }

    /** The published value of a solid bar is that of the short form. */
    private static double torsionStress(Section section, double torque) {
        return section instanceof Section.Rectangle bar
                ? bar.shortFormTorsionStress(torque)
                : section.torsionStress(torque);
    }

    /** Exact series of Timoshenko and Goodier in place of the short form. */
    private static List<ProofValue> rectangles() {
        double[][] table = {
            {1, 0.1406, 0.208}, {1.5, 0.1958, 0.231}, {2, 0.229, 0.246},
            {3, 0.263, 0.267}, {4, 0.281, 0.282}, {10, 0.312, 0.312}
        };
        Comparison all =
                new Comparison(
                        "torsion of a rectangle",
                        5e-3,
                        "Timoshenko and Goodier, Theory of Elasticity, table of rectangular bars"
                                + " (from memory)");
        for (double[] row : table) {
            Section bar = new Section.Rectangle(row[0] * MM, MM);
            double ab2 = row[0] * MM * MM * MM;
            all.value("k1 at a/b " + row[0], bar.torsionConstant() / (ab2 * MM), row[1], "1")
                    .value("k2 at a/b " + row[0], 1 / (bar.torsionStress(1) * ab2), row[2], "1");
        }
        return all.values();
    }

    private static List<ProofValue> creep(Section solid) {
        Material crept = Material.get("PLA, printed").crept(0.4);
        double tip = beam(solid, 120, crept).tipDeflection(10, Bending.ALONG_HEIGHT);
        return new Comparison(
                        "printed cantilever after 1000 h",
                        1e-3,
                        "pseudo-elastic method (seen in a plastics design text); creep ratio 0.4 is"
                                + " common practice, no source")
                .value("tip deflection", tip / MM, 13.3333, "mm")
                .values();
    }
}
