// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.elements.column.CriticalLoad;
import foldwright.lift.ArmLoad;
import foldwright.lift.NetSection;
import foldwright.lift.PinLoad;
import foldwright.lift.ScrewLoad;
import foldwright.lift.ScrewStrength;
import foldwright.machine.Machine;
import foldwright.machine.drive.Screw;
import foldwright.machine.drive.ScrewThread;
import foldwright.machine.linkage.BallBearing;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.study.HandCard.Step;
import java.util.List;

/** Hand sums of what arms, pins, screws and nuts bear, with the machine's own numbers. */
final class RatingSums {
    private static final double CUBIC_MILLIMETRE = 1e9;
    private static final double SQUARE_MILLIMETRE = 1e6;

    private final Pin centre;
    private final Machine machine;
    private final Screw screw;
    private final ScrewStrength strength;

    RatingSums(Machine machine) {
        this.machine = machine;
        this.centre = machine.lift().pinAt(PinPlace.CENTRE);
        this.screw = machine.drive().screw();
        this.strength = new ScrewStrength(screw);
    }

    HandCard arm(ArmLoad arm) {
        NetSection net = NetSection.of(machine.lift().arm(), centre.diameter());
        return Hand.card(
                "bending and thrust on the section beside the hole",
                "σ = M/Z + N/A",
                Numerals.with(arm.bending(), Shown.NEWTON_METRE)
                        + "/"
                        + Numerals.number(net.modulus() * CUBIC_MILLIMETRE)
                        + " mm³ + "
                        + Numerals.with(Math.abs(arm.axial()), Shown.NEWTON)
                        + "/"
                        + Numerals.number(net.area() * SQUARE_MILLIMETRE)
                        + " mm² = "
                        + Numerals.with(net.stress(arm.bending(), arm.axial()), Shown.MEGAPASCAL),
                "Straight beam theory");
    }

    HandCard bush(PinLoad pin, Bush bush) {
        return Hand.card(
                "mean pressure in the bush",
                "p = F/(d b)",
                Numerals.with(pin.force(), Shown.NEWTON)
                        + "/("
                        + millimetres(centre.diameter())
                        + " × "
                        + millimetres(bush.length())
                        + ") = "
                        + Numerals.with(pin.pressure(), Shown.MEGAPASCAL),
                "Projected area of a plain bearing");
    }

    HandCard bearings(PinLoad pin, BallBearing ball) {
        double rating = ball.staticRating().orElse(Double.NaN);
        return Hand.card(
                "static safety of the bearings of one pin",
                "s_0 = z C_0/P_0",
                ball.count()
                        + " × "
                        + Numerals.with(rating, Shown.NEWTON)
                        + "/"
                        + Numerals.with(pin.force(), Shown.NEWTON)
                        + " = "
                        + Numerals.number(ball.count() * rating / pin.force()),
                "ISO 76:2006, static load rating");
    }

    HandCard buckling(ScrewLoad load) {
        CriticalLoad limit = strength.buckling(load.freeLength());
        double c = strength.ends().recommended();
        String root = millimetres(screw.thread().rootDiameter());
        Step slender =
                new Step(
                        "slenderness of the free length",
                        "λ = L/(d_3/4)",
                        millimetres(load.freeLength())
                                + "/("
                                + root
                                + "/4) = "
                                + Numerals.number(limit.slenderness()));
        return new HandCard(
                List.of(slender, critical(limit, c)),
                "Budynas, Nisbett, Shigley's Mechanical Engineering Design, 9th ed. 2011, Eqs. 4-43"
                        + " and 4-48, end constants Table 4-2; factor 2 as the more careful of two"
                        + " screw makers asks");
    }

    private Step critical(CriticalLoad limit, double c) {
        double e = screw.material().youngsModulus();
        double area = Math.PI * Math.pow(screw.thread().rootDiameter(), 2) / 4;
        String at = Numerals.number(area * SQUARE_MILLIMETRE) + " mm²";
        String result = " = " + Numerals.with(limit.force(), Shown.NEWTON);
        String modulus = Numerals.number(e / 1e9) + " GPa";
        String slenderness = Numerals.number(limit.slenderness());
        if (limit.curve() == CriticalLoad.Curve.EULER) {
            return new Step(
                    "slender: buckling load after Euler",
                    "F_b = A C π² E/λ²",
                    at
                            + " × "
                            + Numerals.given(c)
                            + " × π² × "
                            + modulus
                            + "/"
                            + slenderness
                            + "²"
                            + result);
        }
        String yield = Numerals.with(strength.yieldStrength(), Shown.MEGAPASCAL);
        return new Step(
                "stocky: buckling load after Johnson",
                "F_b = A (S_y - (S_y λ/(2π))²/(C E))",
                at
                        + " × ("
                        + yield
                        + " - ("
                        + yield
                        + " × "
                        + slenderness
                        + "/(2π))²/("
                        + Numerals.given(c)
                        + " × "
                        + modulus
                        + "))"
                        + result);
    }

    HandCard whirling() {
        double root = Math.sqrt(strength.ends().whirlConstant());
        return Hand.card(
                "first bending resonance of the turning screw",
                "n_w = (β/L)² (d_3/4) √(E/ρ)/(2π)",
                "("
                        + Numerals.number(root)
                        + "/"
                        + millimetres(screw.length())
                        + ")² × "
                        + millimetres(screw.thread().rootDiameter())
                        + "/4 × √("
                        + Numerals.number(screw.material().youngsModulus() / 1e9)
                        + " GPa/"
                        + Numerals.number(screw.material().density())
                        + " kg/m³)/(2π) = "
                        + Numerals.with(strength.whirlSpeed(), Shown.REVOLUTION_PER_SECOND),
                "Euler-Bernoulli beam on its ends; staying under 80 % is common practice, no source");
    }

    HandCard nut(ScrewLoad load) {
        ScrewThread thread = screw.thread();
        return Hand.card(
                "mean pressure on the flanks",
                "p = F P/(π d_2 H_1 L)",
                Numerals.with(Math.abs(load.force()), Shown.NEWTON)
                        + " × "
                        + millimetres(thread.pitch())
                        + "/(π × "
                        + millimetres(thread.pitchDiameter())
                        + " × "
                        + millimetres(thread.pitch() / 2)
                        + " × "
                        + millimetres(screw.nut().length())
                        + ") = "
                        + Numerals.with(load.nutPressure(), Shown.MEGAPASCAL),
                "Projected flanks, all engaged turns sharing alike (Muhs et al., Roloff/Matek"
                        + " Maschinenelemente, from memory)");
    }

    private static String millimetres(double length) {
        return Numerals.with(length, Shown.MILLIMETRE);
    }
}
