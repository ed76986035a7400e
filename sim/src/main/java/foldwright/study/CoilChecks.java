// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.elements.spring.CylindricalSpring;
import foldwright.elements.spring.EndSeats;
import foldwright.elements.spring.WireGrade;
import foldwright.machine.Machine;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.Upright;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Stress and lateral buckling of upright coil springs given by their wire, pressed hardest at flat.
 */
final class CoilChecks {
    /** Limits of wire and buckling hold by themselves: no further margin is asked. */
    private static final double OWN_LIMIT = 1;

    private final Machine machine;

    CoilChecks(Machine machine) {
        this.machine = machine;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        for (HelperSpring spring : machine.springs()) {
            if (spring.law() instanceof Coil coil && spring.place() instanceof Upright upright) {
                double squeeze = coil.freeLength() - Bench.flat(machine) - upright.gapAtPins();
                if (squeeze > 0) {
                    out.add(stress(spring.name(), coil, squeeze));
                    buckling(spring.name(), coil, squeeze).ifPresent(out::add);
                }
            }
        }
        return out;
    }

    private static CylindricalSpring law(Coil coil, WireGrade grade) {
        return new CylindricalSpring(
                coil.wire(),
                coil.meanDiameter(),
                coil.activeCoils(),
                coil.activeCoils() + 2,
                coil.freeLength(),
                coil.closedLength(),
                grade.shearModulus(coil.wire()));
    }

    private Place flat() {
        return Place.at(Bench.flat(machine), "lying flat");
    }

    private Check stress(String name, Coil coil, double squeeze) {
        WireGrade grade = WireGrade.get(coil.grade());
        CylindricalSpring law = law(coil, grade);
        double force = law.rate() * squeeze;
        Outcome outcome =
                Outcome.of(
                        Amount.of(law.correctedStress(force), Shown.MEGAPASCAL),
                        Amount.of(grade.shearLimit(coil.wire()), Shown.MEGAPASCAL),
                        OWN_LIMIT,
                        flat());
        String finding =
                "Lying flat each of "
                        + name
                        + " pushes with "
                        + Numerals.with(force, Shown.NEWTON)
                        + ", which strains its wire with "
                        + outcome.required().text()
                        + ".";
        return check(
                "survive.coil",
                "Wire of the springs: " + name,
                finding,
                outcome,
                new String[] {
                    "shear stress of the wire",
                    "tau = K 8 F D/(pi d^3)",
                    outcome.required().text(),
                    "Budynas, Nisbett, Shigley's Mechanical Engineering Design, 9th ed., Eqs. 10-5, 10-7 and"
                            + " Table 10-6: 0.45 of the tensile strength before set removal"
                });
    }

    private Optional<Check> buckling(String name, Coil coil, double squeeze) {
        WireGrade grade = WireGrade.get(coil.grade());
        OptionalDouble limit =
                law(coil, grade)
                        .bucklingDeflection(
                                grade.youngsModulus(coil.wire()), EndSeats.PARALLEL_PLATES);
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        Outcome outcome =
                Outcome.of(
                        Amount.of(squeeze, Shown.MILLIMETRE),
                        Amount.of(limit.getAsDouble(), Shown.MILLIMETRE),
                        OWN_LIMIT,
                        flat());
        String finding =
                name
                        + " are squeezed by "
                        + outcome.required().text()
                        + " and bow out from "
                        + outcome.available().text()
                        + " on between flat plates; guide them on a rod or in a tube.";
        return Optional.of(
                check(
                        "survive.bow",
                        "Springs bowing out: " + name,
                        finding,
                        outcome,
                        new String[] {
                            "squeeze at which it bows out",
                            "slender: L0/D above 2.63/0.5",
                            outcome.available().text(),
                            "EN 13906-1, buckling factor 0.5 between parallel plates, from memory; the same as"
                                    + " Shigley Eq. 10-10"
                        }));
    }

    private static Check check(
            String id, String title, String finding, Outcome outcome, String[] hand) {
        return new Check(
                id,
                Question.ORDER,
                new Check.Text(title, Sentences.of(finding)),
                outcome,
                Grounds.of(Hand.card(hand[0], hand[1], hand[2], hand[3])),
                List.of(),
                Optional.empty());
    }
}
