// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.elements.spring.CoilStress;
import foldwright.elements.spring.TorsionSpring;
import foldwright.elements.spring.WireGrade;
import foldwright.lift.SpringStroke;
import foldwright.machine.spring.SpringLaw;
import foldwright.machine.spring.TorsionAtFlat;
import foldwright.machine.spring.TorsionCoil;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Bending stress of torsion springs, and the room left on their mandrel as they wind in. */
final class TorsionStrength {
    private static final String BENDING_SOURCE =
            "Shigley's Mechanical Engineering Design, 9th ed., Eqs. 10-43, 10-44; limit 0.70 of the"
                    + " tensile strength, EN 13906-3, from memory, which allows it without the"
                    + " factor K: with it the check is on the safe side";

    private final WorkedSpring spring;
    private final SpringStroke stroke;

    TorsionStrength(WorkedSpring spring) {
        this.spring = spring;
        this.stroke = spring.stroke();
    }

    List<Check> checks() {
        Optional<TorsionSpring> wound = wound(stroke.spring().law());
        if (wound.isEmpty()) {
            return List.of(spring.loadOnly());
        }
        List<Check> out = new ArrayList<>();
        out.add(stress(wound.get()));
        stroke.spring().guideDiameter().ifPresent(d -> out.add(mandrel(wound.get(), d)));
        return out;
    }

    private static WireGrade grade(SpringLaw law) {
        return WireGrade.get(
                law instanceof TorsionCoil c ? c.grade() : ((TorsionAtFlat) law).grade());
    }

    private static Optional<TorsionSpring> wound(SpringLaw law) {
        WireGrade grade = grade(law);
        if (law instanceof TorsionCoil c) {
            return Optional.of(spring(grade, c.wire(), c.meanDiameter(), c.activeCoils()));
        }
        TorsionAtFlat c = (TorsionAtFlat) law;
        boolean known =
                c.wire().isPresent() && c.meanDiameter().isPresent() && c.activeCoils().isPresent();
        return known
                ? Optional.of(
                        spring(
                                grade,
                                c.wire().getAsDouble(),
                                c.meanDiameter().getAsDouble(),
                                c.activeCoils().getAsDouble()))
                : Optional.empty();
    }

    private static TorsionSpring spring(WireGrade grade, double wire, double mean, double coils) {
        return new TorsionSpring(
                wire, mean, coils, 0, grade.youngsModulus(wire), TorsionSpring.RateForm.BARE_WIRE);
    }

    private Check stress(TorsionSpring wound) {
        WireGrade grade = grade(stroke.spring().law());
        double wire = wound.wireDiameter();
        Outcome outcome =
                Outcome.of(
                        Amount.of(wound.stress(stroke.most()), Shown.MEGAPASCAL),
                        Amount.of(grade.bendingLimit(wire), Shown.MEGAPASCAL),
                        SpringStrength.OWN_LIMIT,
                        spring.place());
        String finding =
                spring.where()
                        + " each spring of the "
                        + spring.name()
                        + " is wound by "
                        + Numerals.with(stroke.worked(), Shown.DEGREE)
                        + " and turns with "
                        + spring.load()
                        + "; its wire ("
                        + grade.name()
                        + ") then bears a bending stress of "
                        + outcome.required().text()
                        + ".";
        HandCard card =
                Hand.card(
                        "bending stress at the inside of the coil",
                        "σ = K 32 M/(π d^3), K = (4C^2 - C - 1)/(4C (C - 1)), C = D/d",
                        Numerals.number(CoilStress.innerBending(wound.index()))
                                + " × 32 × "
                                + spring.load()
                                + "/(π × ("
                                + Numerals.with(wire, Shown.MILLIMETRE)
                                + ")³) = "
                                + outcome.required().text(),
                        BENDING_SOURCE);
        List<String> limits = new ArrayList<>();
        limits.add("Wound in, not out: loaded the other way it bears less.");
        limits.add("The bend where a leg leaves the body is not judged.");
        if (stroke.spring().guideDiameter().isEmpty()) {
            limits.add(
                    "Binding on a mandrel is not judged: the machine file gives no guide diameter.");
        }
        return spring.check(
                Question.ORDER,
                "survive.torsion",
                "Wire of the springs: " + spring.name(),
                finding,
                outcome,
                card,
                limits);
    }

    private Check mandrel(TorsionSpring wound, double mandrel) {
        double inside = wound.woundMeanDiameter(stroke.worked()) - wound.wireDiameter();
        Outcome outcome =
                Outcome.of(
                        Amount.of(mandrel, Shown.MILLIMETRE),
                        Amount.of(inside, Shown.MILLIMETRE),
                        SpringStrength.OWN_LIMIT,
                        spring.place());
        String finding =
                spring.where()
                        + " the "
                        + spring.name()
                        + " are wound in to "
                        + outcome.available().text()
                        + " inside, on a mandrel of "
                        + outcome.required().text()
                        + ".";
        return spring.check(
                Question.ORDER,
                "survive.mandrel",
                "Springs on their mandrel: " + spring.name(),
                finding,
                outcome,
                Hand.card(
                        "inside diameter wound in",
                        "D N/(N + φ/(2π)) - d",
                        outcome.available().text(),
                        "Shigley's Mechanical Engineering Design, 9th ed., Eq. 10-53, from memory"),
                List.of());
    }
}
