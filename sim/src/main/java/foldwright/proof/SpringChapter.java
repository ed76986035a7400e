// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.spring.Attachment;
import foldwright.elements.spring.CoilStress;
import foldwright.elements.spring.ConicalLaw;
import foldwright.elements.spring.ConicalSpring;
import foldwright.elements.spring.CylindricalSpring;
import foldwright.elements.spring.EndCoils;
import foldwright.elements.spring.EndSeats;
import foldwright.elements.spring.WireSize;
import foldwright.elements.spring.WireStrength;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Helper springs: cylindrical, in parallel, buckling, conical, and the strength of wire. */
public final class SpringChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final double GPA = 1e9;

    @Override
    public String title() {
        return "Springs";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(musicWire());
        values.addAll(concentric());
        values.addAll(small());
        values.addAll(smallBuckling());
        values.addAll(conicalFlat());
        values.addAll(conicalTelescoping());
        values.addAll(wire());
        return values;
    }

    private static List<ProofValue> musicWire() {
        double d = 2.5 * MM;
        double mean = 28.5 * MM;
        // free length = solid length + deflection to the yield stress, as the problem asks
        double tensile = WireStrength.MUSIC_A228.minimumTensile(d);
        double yield = 0.45 * tensile;
        CylindricalSpring spring =
                CylindricalSpring.wound(d, mean, 13, EndCoils.PLAIN_GROUND, 162.72 * MM, 81 * GPA);
        double solidForce = yield / spring.correctedStress(1);
        double free = spring.solidLength() + solidForce / spring.rate();
        double stable = 2.63 * mean / EndSeats.PARALLEL_PLATES.factor();
        return new Comparison(
                        "music wire OD 31, 14 coils",
                        1e-3,
                        "Shigley 10th ed. Problem 10-3 with its published solution")
                .value("index", spring.index(), 11.4, "1")
                .value("rate", spring.rate() * MM, 1.31425, "N/mm")
                .printed("rate", spring.rate() * MM, 1.314, 1e-3, "N/mm")
                .value("tensile strength", tensile / MPA, 1935.92, "MPa")
                .printed("tensile strength", tensile / MPA, 1936, 1, "MPa")
                .value("yield in shear", yield / MPA, 871.164, "MPa")
                .printed("yield in shear", yield / MPA, 871.2, 0.1, "MPa")
                .value("Bergstraesser factor", CoilStress.bergstraesser(11.4), 1.11737, "1")
                .printed("Bergstraesser factor", CoilStress.bergstraesser(11.4), 1.117, 1e-3, "1")
                .value("Wahl factor", CoilStress.wahl(11.4), 1.12606, "1")
                .value("solid length", spring.solidLength() / MM, 35, "mm")
                .value("force to solid at yield", solidForce, 167.856, "N")
                .printed("force to solid at yield", solidForce, 167.9, 0.1, "N")
                .value("free length", free / MM, 162.72, "mm")
                .within(1e-3, "free length, book", free / MM, 162.8, "mm")
                .value("critical free length", stable / MM, 149.91, "mm")
                .values();
    }

    private static List<ProofValue> concentric() {
        double g = 81.37 * GPA;
        CylindricalSpring outer =
                CylindricalSpring.wound(10 * MM, 80 * MM, 8, EndCoils.SQUARED_GROUND, 0.3, g);
        CylindricalSpring inner =
                CylindricalSpring.wound(8 * MM, 64 * MM, 12, EndCoils.SQUARED_GROUND, 0.3, g);
        double deflection = 2000 / (outer.rate() + inner.rate());
        double onOuter = outer.rate() * deflection;
        double onInner = inner.rate() * deflection;
        double wahl = CoilStress.wahl(8);
        return new Comparison(
                        "two concentric springs share 2000 N",
                        1e-4,
                        "V. B. Bhandari, Design of Machine Elements, Example 10.18 (title from"
                                + " memory, numbers seen in its public companion archive)")
                .value("outer force", onOuter, 1304.348, "N")
                .value("inner force", onInner, 695.652, "N")
                .value("deflection", deflection / MM, 52.5266, "mm")
                .value(
                        "outer stress",
                        wahl * outer.uncorrectedStress(onOuter) / MPA,
                        314.617,
                        "MPa")
                .value(
                        "inner stress",
                        wahl * inner.uncorrectedStress(onInner) / MPA,
                        262.181,
                        "MPa")
                .values();
    }

    private static CylindricalSpring smallSpring() {
        return CylindricalSpring.wound(
                1 * MM, 10 * MM, 8, EndCoils.SQUARED_GROUND, 60 * MM, 81.5 * GPA);
    }

    private static List<ProofValue> small() {
        CylindricalSpring spring = smallSpring();
        double tensile = WireStrength.SH.minimumTensile(1 * MM);
        double deflection = 15 / spring.rate();
        return new Comparison(
                        "spring d 1, D 10, n 8 at 15 N",
                        1e-3,
                        "own case recomputed independently; EN 13906-1 and EN 10270-1 forms from"
                                + " memory")
                .value("rate", spring.rate() * MM, 1.27344, "N/mm")
                .value("deflection", deflection / MM, 11.7791, "mm")
                .value("Bergstraesser factor", CoilStress.bergstraesser(10), 1.13514, "1")
                .value("Wahl factor", CoilStress.wahl(10), 1.14483, "1")
                .value("corrected stress", spring.correctedStress(15) / MPA, 433.59, "MPa")
                .value(
                        "uncorrected stress when solid",
                        spring.uncorrectedStress(spring.solidForce()) / MPA,
                        1621.39,
                        "MPa")
                .value("tensile strength SH", tensile / MPA, 2220, "MPa")
                .value("allowed when solid", 0.56 * tensile / MPA, 1243.2, "MPa")
                .values();
    }

    private static List<ProofValue> smallBuckling() {
        CylindricalSpring spring = smallSpring();
        Comparison all =
                new Comparison(
                        "spring d 1, D 10, L0 60",
                        1e-3,
                        "own case recomputed independently; Shigley Eq. 10-10, same as EN 13906-1");
        buckling(all, spring, EndSeats.PARALLEL_PLATES, 24.3276, 51.6139);
        buckling(all, spring, EndSeats.PLATE_AND_PIVOT, 10.476, 36.867);
        buckling(all, spring, EndSeats.TWO_PIVOTS, 4.82617, 25.8069);
        return all.values();
    }

    private static void buckling(
            Comparison all, CylindricalSpring spring, EndSeats seats, double at, double stable) {
        double e = 206 * GPA;
        String name = "nu " + seats.factor();
        all.value(
                        name + ", buckling deflection",
                        spring.bucklingDeflection(e, seats).orElse(Double.NaN) / MM,
                        at,
                        "mm")
                .value(
                        name + ", longest stable length",
                        spring.longestStableLength(e, seats) / MM,
                        stable,
                        "mm");
    }

    private static Comparison conicalSource(String name) {
        return new Comparison(
                name,
                1e-3,
                "recomputed independently and by slicing the wire into 200 000 pieces; form of"
                        + " Rodriguez, Paredes, Sartor, J. Mech. Des. 128 (2006) 1352 (not seen)");
    }

    private static List<ProofValue> conicalFlat() {
        ConicalSpring spring =
                new ConicalSpring(1.2 * MM, 10 * MM, 22 * MM, 6, 40 * MM, 0, 81.5 * GPA);
        Comparison all = conicalSource("conical d 1.2, 10 to 22, 6 coils");
        all.fact("telescopes", spring.telescopes(), false)
                .value("active solid length", spring.activeSolidLength() / MM, 3.97995, "mm");
        conicalLimits(all, spring, 0.753596, 11.9102, 15.8044, 126.819);
        conicalPoint(all, spring, 3, 3.98091, 0.7536, 104.176);
        conicalPoint(all, spring, 8, 10.6158, 0.7536, 277.802);
        conicalPoint(all, spring, 15, 19.2869, 1.04168, 485.008);
        conicalPoint(all, spring, 30, 27.8607, 2.89618, 785.058);
        all.value("free coils at 30 N", spring.freeCoils(30), 3.0846, "1")
                .value(
                        "largest free D at 30 N",
                        spring.largestFreeDiameter(30) / MM,
                        16.1692,
                        "mm");
        inverse(all, spring, 9.005, 6.78614);
        inverse(all, spring, 27.015, 27.6977);
        inverse(all, spring, 34.219, 66.9354);
        all.within(2e-4, "sliced wire at 15 N", spring.deflection(15) / MM, 19.2869, "mm")
                .within(2e-4, "sliced wire at 30 N", spring.deflection(30) / MM, 27.8607, "mm");
        return all.values();
    }

    private static List<ProofValue> conicalTelescoping() {
        ConicalSpring spring =
                new ConicalSpring(1 * MM, 9 * MM, 24 * MM, 4, 30 * MM, 0, 81.5 * GPA);
        Comparison all = conicalSource("conical d 1, 9 to 24, 4 coils");
        all.fact("telescopes", spring.telescopes(), true);
        conicalLimits(all, spring, 0.469881, 5.52707, 11.7627, 104.81);
        conicalPoint(all, spring, 2, 4.25639, 0.46988, 128.803);
        conicalPoint(all, spring, 5, 10.641, 0.46988, 322.006);
        conicalPoint(all, spring, 10, 18.0268, 1.06173, 534.644);
        conicalPoint(all, spring, 25, 25.1585, 4.04356, 1007.78);
        all.value("free coils at 25 N", spring.freeCoils(25), 1.4699, "1")
                .value(
                        "largest free D at 25 N",
                        spring.largestFreeDiameter(25) / MM,
                        14.5121,
                        "mm");
        inverse(all, spring, 7.5, 3.52411);
        inverse(all, spring, 22.5, 16.9644);
        inverse(all, spring, 28.5, 48.9725);
        all.within(2e-4, "sliced wire at 10 N", spring.deflection(10) / MM, 18.0268, "mm")
                .within(2e-4, "sliced wire at 25 N", spring.deflection(25) / MM, 25.1585, "mm");
        return all.values();
    }

    private static void conicalLimits(
            Comparison all,
            ConicalSpring spring,
            double rate,
            double touchForce,
            double touchDeflection,
            double closingForce) {
        all.value("rate at first", spring.initialRate() * MM, rate, "N/mm")
                .value("force as the first coil closes", spring.touchForce(), touchForce, "N")
                .value(
                        "deflection there",
                        spring.deflection(spring.touchForce()) / MM,
                        touchDeflection,
                        "mm")
                .value("force when all are closed", spring.closingForce(), closingForce, "N");
    }

    private static void conicalPoint(
            Comparison all,
            ConicalSpring spring,
            double force,
            double deflection,
            double tangent,
            double stress) {
        ConicalLaw law = spring.law(Attachment.TOUCHING);
        double length = spring.freeLength() - spring.deflection(force);
        all.value(force + " N, deflection", spring.deflection(force) / MM, deflection, "mm")
                .value(force + " N, tangent", law.stiffness(length) * MM, tangent, "N/mm")
                .value(force + " N, stress", spring.correctedStress(force) / MPA, stress, "MPa");
    }

    private static void inverse(
            Comparison all, ConicalSpring spring, double deflectionMm, double force) {
        double length = spring.freeLength() - deflectionMm * MM;
        all.value(
                "force at deflection " + deflectionMm + " mm",
                spring.law(Attachment.TOUCHING).force(length),
                force,
                "N");
    }

    private static List<ProofValue> wire() {
        Comparison all =
                new Comparison(
                        "wire EN 10270-1 SM",
                        5e-3,
                        "EN 10270-1 table as reproduced by a public glossary; 5 MPa allowed");
        for (WireSize size : WireSize.all()) {
            double d = size.diameter();
            String name = String.format(Locale.ROOT, "least tensile strength at %.2f mm", d / MM);
            size.tabulatedTensileSm()
                    .ifPresent(
                            strength ->
                                    all.near(
                                            name,
                                            WireStrength.SM.minimumTensile(d) / MPA,
                                            strength / MPA,
                                            5,
                                            "MPa"));
        }
        return all.values();
    }
}
