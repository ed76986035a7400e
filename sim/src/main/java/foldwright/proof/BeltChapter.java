// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.belt.BeltProfile;
import foldwright.elements.belt.BeltPulley;
import foldwright.elements.belt.BeltSpan;
import foldwright.elements.belt.TwoSpanDrive;
import java.util.ArrayList;
import java.util.List;

/** Synchronous belts: stretch, tensions, sound, teeth in mesh, tooth jump. */
public final class BeltChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double UM = 1e-6;
    private static final double HALF_TURN = Math.PI;
    private static final String SOURCE =
            "recomputed independently; slack-side rule: Machine Design, 7 June 2001, Tension in"
                    + " timing-belt drives";

    @Override
    public String title() {
        return "Synchronous belts";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(narrowAxis());
        values.addAll(wideAxis());
        values.addAll(
                jump(
                        "20 teeth, wrap 180",
                        20,
                        180,
                        15000,
                        850,
                        30,
                        new double[] {2.35619, 41.5799, 71.5799}));
        values.addAll(
                jump(
                        "16 teeth, wrap 120",
                        16,
                        120,
                        22500,
                        900,
                        40,
                        new double[] {1.5708, 39.2699, 79.2699}));
        return values;
    }

    private static List<ProofValue> narrowAxis() {
        BeltProfile belt = BeltProfile.get("2 mm curvilinear glass fibre rubber, 6 mm");
        Comparison all = new Comparison("2 mm belt, 6 wide, spans 300 and 550", 1e-3, SOURCE);
        all.value("EA", belt.stretchStiffness(), 15000, "N");
        TwoSpanDrive drive = new TwoSpanDrive(15000, 300 * MM, 550 * MM, 30);
        axis(
                all,
                drive,
                12,
                new double[] {50, 27.2727, 77.2727, 155.294, 37.7647, 25.7647, 6.63529});
        sound(all, 30, 150 * MM, 0.0072, 215.166);
        pulley(
                all,
                new BeltPulley(20, 2 * MM, HALF_TURN),
                12,
                30,
                new double[] {6.3662, 0.0763944, 10, 1, 60});
        return all.values();
    }

    private static List<ProofValue> wideAxis() {
        BeltProfile belt = BeltProfile.get("T5 trapezoidal steel cord polyurethane, 10 mm");
        Comparison all = new Comparison("5 mm belt, 10 wide, spans 400 and 400", 1e-3, SOURCE);
        all.value("EA", belt.stretchStiffness(), 90000, "N");
        TwoSpanDrive drive = new TwoSpanDrive(90000, 400 * MM, 400 * MM, 80);
        axis(all, drive, 40, new double[] {225, 225, 450, 88.8889, 100, 60, 28});
        sound(all, 80, 400 * MM, 0.021, 77.1517);
        pulley(
                all,
                new BeltPulley(12, 5 * MM, HALF_TURN),
                40,
                80,
                new double[] {9.5493, 0.381972, 6, 1, 160});
        return all.values();
    }

    /** {@code published}: k1, k2, k N/mm, deflection um, tight, slack, pretension asked N. */
    private static void axis(Comparison all, TwoSpanDrive drive, double force, double[] published) {
        TwoSpanDrive.Tensions tensions = drive.tensions(force);
        all.value("stiffness of span 1", drive.pullingStiffness() * MM, published[0], "N/mm")
                .value("stiffness of span 2", drive.returnStiffness() * MM, published[1], "N/mm")
                .value("stiffness at the carriage", drive.stiffness() * MM, published[2], "N/mm")
                .value("deflection", drive.deflection(force) / UM, published[3], "um")
                .value("tight span", tensions.tight(), published[4], "N")
                .value("slack span", tensions.slack(), published[5], "N")
                .fact("both spans stay tight", tensions.slack() > 0, true)
                .value(
                        "pretension that leaves 0.2 F",
                        drive.pretensionFor(force, 0.2),
                        published[6],
                        "N");
    }

    private static void sound(
            Comparison all, double tension, double length, double linearMass, double frequency) {
        all.value(
                        "plucked span",
                        BeltSpan.pluckedFrequency(tension, length, linearMass),
                        frequency,
                        "Hz")
                .value(
                        "tension from its sound",
                        BeltSpan.tensionOf(frequency, length, linearMass),
                        tension,
                        "N");
    }

    /** {@code published}: radius mm, torque N·m, teeth in mesh, mesh factor, shaft load N. */
    private static void pulley(
            Comparison all,
            BeltPulley pulley,
            double force,
            double pretension,
            double[] published) {
        all.value("pitch radius", pulley.pitchRadius() / MM, published[0], "mm")
                .value("motor torque", pulley.torque(force), published[1], "N·m")
                .value("teeth in mesh", pulley.teethInMesh(), published[2], "1")
                .value("mesh factor", pulley.meshFactor(), published[3], "1")
                .value(
                        "shaft load at rest",
                        pulley.shaftLoad(pretension, pretension),
                        published[4],
                        "N");
    }

    /** {@code published}: extra path mm, tension rise N, mean tension N. */
    private static List<ProofValue> jump(
            String name,
            int teeth,
            double wrapDegrees,
            double stretchStiffness,
            double freeLengthMm,
            double pretension,
            double[] published) {
        BeltPulley pulley = new BeltPulley(teeth, 2 * MM, Math.toRadians(wrapDegrees));
        double rise = pulley.rideOutTension(stretchStiffness, freeLengthMm * MM, 0.75 * MM);
        return new Comparison(
                        "tooth jump, " + name,
                        1e-3,
                        "own geometric criterion, common practice, no source; arithmetic recomputed")
                .value("extra path", pulley.rideOutPath(0.75 * MM) / MM, published[0], "mm")
                .value("tension rise", rise, published[1], "N")
                .value("mean tension", pretension + rise, published[2], "N")
                .values();
    }
}
