// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.elements.spring.CoilStress;
import foldwright.elements.spring.CylindricalSpring;
import foldwright.elements.spring.EndSeats;
import foldwright.elements.spring.WireGrade;
import foldwright.lift.SpringLaws;
import foldwright.lift.SpringStroke;
import foldwright.machine.spring.BetweenPoints;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.SpringLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Shear stress and buckling of compression springs, cylindrical and conical, in any direction. */
final class CoilStrength {
    private static final String SHEAR_SOURCE =
            "Budynas, Nisbett, Shigley's Mechanical Engineering Design, 9th ed., Eqs. 10-5, 10-7"
                    + " (the factor is that of EN 13906-1); limit 0.45 of the tensile strength"
                    + " before set removal, Table 10-6, for ASTM wire, 0.56 (EN 13906-1, from"
                    + " memory) for EN wire";

    private static final String CONE_SOURCE =
            "Closing of constant-pitch cones: E. Rodriguez, M. Paredes, M. Sartor, J. Mech. Des."
                    + " 128 (2006) 1352 (from memory); stress as for a cylinder of that coil";

    private static final String BOW_SOURCE =
            "EN 13906-1, buckling factors 0.5 and 1, from memory; the same as Shigley Eq. 10-10";

    private final WorkedSpring spring;
    private final SpringStroke stroke;

    CoilStrength(WorkedSpring spring) {
        this.spring = spring;
        this.stroke = spring.stroke();
    }

    /**
     * What the stress needs of a wire.
     *
     * @param wire d [m]
     * @param coil mean diameter of the coil that is stressed most [m]
     * @param grade of the wire
     */
    private record Wire(double wire, double coil, WireGrade grade) {}

    List<Check> checks() {
        Optional<Wire> wire = wire(stroke.spring().law());
        if (wire.isEmpty()) {
            return List.of(spring.loadOnly());
        }
        List<Check> out = new ArrayList<>();
        out.add(stress(wire.get()));
        bow(wire.get()).ifPresent(out::add);
        return out;
    }

    private Optional<Wire> wire(SpringLaw law) {
        if (law instanceof Coil c) {
            return Optional.of(new Wire(c.wire(), c.meanDiameter(), WireGrade.get(c.grade())));
        }
        if (law instanceof ConicalCoil c) {
            double coil = SpringLaws.conical(c).largestFreeDiameter(stroke.most());
            return Optional.of(new Wire(c.wire(), coil, WireGrade.get(c.grade())));
        }
        RatedCoil c = (RatedCoil) law;
        return c.wire().isPresent() && c.meanDiameter().isPresent()
                ? Optional.of(
                        new Wire(
                                c.wire().getAsDouble(),
                                c.meanDiameter().getAsDouble(),
                                WireGrade.get(c.grade())))
                : Optional.empty();
    }

    private Check stress(Wire w) {
        double tau = CoilStress.corrected(stroke.most(), w.coil(), w.wire());
        Outcome outcome =
                Outcome.of(
                        Amount.of(tau, Shown.MEGAPASCAL),
                        Amount.of(w.grade().shearLimit(w.wire()), Shown.MEGAPASCAL),
                        SpringStrength.OWN_LIMIT,
                        spring.place());
        String finding =
                spring.where()
                        + " each spring of the "
                        + spring.name()
                        + " pushes with "
                        + spring.load()
                        + "; its wire ("
                        + w.grade().name()
                        + ") then bears a shear stress of "
                        + outcome.required().text()
                        + "."
                        + closed();
        double index = w.coil() / w.wire();
        HandCard card =
                Hand.card(
                        "shear stress of the wire",
                        "τ = K 8 F D/(π d^3), K = (4C + 2)/(4C - 3), C = D/d",
                        Numerals.number(CoilStress.bergstraesser(index))
                                + " × 8 × "
                                + spring.load()
                                + " × "
                                + Numerals.with(w.coil(), Shown.MILLIMETRE)
                                + "/(π × ("
                                + Numerals.with(w.wire(), Shown.MILLIMETRE)
                                + ")³) = "
                                + outcome.required().text(),
                        isCone() ? CONE_SOURCE + ". " + SHEAR_SOURCE : SHEAR_SOURCE);
        return spring.check(
                Question.ORDER,
                "survive.coil",
                "Wire of the springs: " + spring.name(),
                finding,
                outcome,
                card,
                limits(index));
    }

    private boolean isCone() {
        return stroke.spring().law() instanceof ConicalCoil;
    }

    private String closed() {
        if (!(stroke.spring().law() instanceof ConicalCoil c)) {
            return "";
        }
        double free = SpringLaws.conical(c).freeCoils(stroke.most());
        return " There "
                + Numerals.number(c.activeCoils() - free)
                + " of its "
                + Numerals.number(c.activeCoils())
                + " coils lie closed, the largest first.";
    }

    private List<String> limits(double index) {
        List<String> out = new ArrayList<>();
        out.add("Static strength: many thousand strokes ask for less, and are not judged.");
        if (index < 4 || index > 12) {
            out.add(
                    "The spring index D/d is "
                            + Numerals.number(index)
                            + "; springs are usually wound with 4 to 12, where the factor K is well"
                            + " tried.");
        }
        if (stroke.spring().guideDiameter().isPresent()) {
            out.add("Buckling is not judged: the springs are guided.");
        } else if (isCone()) {
            out.add("Buckling is not judged: the formula at hand is for cylinders.");
        }
        return out;
    }

    /** Buckling between flat seats, or between eyes; nothing where a rod or sleeve guides. */
    private Optional<Check> bow(Wire w) {
        if (isCone() || stroke.spring().guideDiameter().isPresent()) {
            return Optional.empty();
        }
        boolean eyes = stroke.spring().place() instanceof BetweenPoints;
        EndSeats seats = eyes ? EndSeats.TWO_PIVOTS : EndSeats.PARALLEL_PLATES;
        OptionalDouble limit =
                cylinder(w).bucklingDeflection(w.grade().youngsModulus(w.wire()), seats);
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        Outcome outcome =
                Outcome.of(
                        Amount.of(stroke.worked(), Shown.MILLIMETRE),
                        Amount.of(limit.getAsDouble(), Shown.MILLIMETRE),
                        SpringStrength.OWN_LIMIT,
                        spring.place());
        String finding =
                "the "
                        + spring.name()
                        + " are squeezed by "
                        + outcome.required().text()
                        + " and buckle from "
                        + outcome.available().text()
                        + (eyes
                                ? " on between two eyes; guide them on a rod or in a tube."
                                : " on between flat plates; guide them on a rod or in a tube.");
        double free = stroke.law().freeCoordinate();
        HandCard card =
                Hand.card(
                        "squeeze at which it buckles",
                        eyes ? "slender: L0/D above 2.63" : "slender: L0/D above 2.63/0.5",
                        "L0/D = "
                                + Numerals.number(free / w.coil())
                                + ": from "
                                + outcome.available().text()
                                + " on",
                        BOW_SOURCE);
        return Optional.of(
                spring.check(
                        Question.ORDER,
                        "survive.bow",
                        "Springs buckling: " + spring.name(),
                        finding,
                        outcome,
                        card,
                        List.of("Seats are taken as square to the spring over the whole travel.")));
    }

    /** Coils matter to the rate only, which buckling does not ask for. */
    private CylindricalSpring cylinder(Wire w) {
        return new CylindricalSpring(
                w.wire(),
                w.coil(),
                1,
                3,
                stroke.law().freeCoordinate(),
                stroke.law().limitCoordinate(),
                w.grade().shearModulus(w.wire()));
    }
}
