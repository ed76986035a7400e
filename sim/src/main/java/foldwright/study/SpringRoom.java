// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.SpringStroke;
import foldwright.machine.spring.AtFoot;
import foldwright.machine.spring.GasSpring;
import foldwright.machine.spring.Upright;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether springs that act along a length keep room: coils open, the rod within its stroke. */
final class SpringRoom {
    /** Length left over solid length from which coils are safe. Common practice, no source. */
    private static final double OPEN_COILS = 1.1;

    /** Rise of force over the stroke that gas springs are made with, as a rule. */
    private static final double LEAST_RISE = 1.2;

    private static final double MOST_RISE = 1.6;

    private final WorkedSpring spring;
    private final SpringStroke stroke;

    SpringRoom(WorkedSpring spring) {
        this.spring = spring;
        this.stroke = spring.stroke();
    }

    /** Nothing for torsion springs, and for springs that are never pressed. */
    Optional<Check> check() {
        if (spring.turns() || stroke.worked() <= 0) {
            return Optional.empty();
        }
        return Optional.of(stroke.spring().law() instanceof GasSpring gas ? gas(gas) : solid());
    }

    private Check solid() {
        Outcome outcome =
                Outcome.of(
                        Amount.of(stroke.law().limitCoordinate(), Shown.MILLIMETRE),
                        Amount.of(stroke.shortest(), Shown.MILLIMETRE),
                        OPEN_COILS,
                        spring.place());
        String finding =
                spring.where()
                        + ", the "
                        + spring.name()
                        + " have "
                        + outcome.available().text()
                        + " and close solid at "
                        + outcome.required().text()
                        + ".";
        return spring.check(
                Question.FOLD,
                "fold.solid",
                "Coils closing: " + spring.name(),
                finding,
                outcome,
                Hand.card(
                        "length left",
                        formula(),
                        numbers() + " = " + outcome.available().text(),
                        "Geometry; a tenth to spare is common practice, no source"),
                List.of());
    }

    private String formula() {
        if (stroke.spring().place() instanceof Upright) {
            return "gap = H + offset";
        }
        return stroke.spring().place() instanceof AtFoot
                ? "length = free length - squeeze"
                : "distance of its two ends";
    }

    private String numbers() {
        if (stroke.spring().place() instanceof Upright upright) {
            return Numerals.with(stroke.shortestAt(), Shown.MILLIMETRE)
                    + " + "
                    + Numerals.with(upright.gapAtPins(), Shown.MILLIMETRE);
        }
        return stroke.spring().place() instanceof AtFoot
                ? Numerals.with(stroke.law().freeCoordinate(), Shown.MILLIMETRE)
                        + " - "
                        + Numerals.with(stroke.worked(), Shown.MILLIMETRE)
                : "at a pivot height of "
                        + Numerals.with(stroke.shortestAt(), Shown.MILLIMETRE)
                        + ": L";
    }

    private Check gas(GasSpring gas) {
        Outcome outcome =
                Outcome.of(
                        Amount.of(stroke.worked(), Shown.MILLIMETRE),
                        Amount.of(gas.stroke(), Shown.MILLIMETRE),
                        SpringStrength.OWN_LIMIT,
                        spring.place());
        String finding =
                spring.where()
                        + ", the "
                        + spring.name()
                        + " are pushed in by "
                        + outcome.required().text()
                        + " of "
                        + outcome.available().text()
                        + " and push with "
                        + spring.load()
                        + " each"
                        + out();
        return spring.check(
                Question.FOLD,
                "fold.stroke",
                "Stroke of the gas springs: " + spring.name(),
                finding,
                outcome,
                Hand.card(
                        "force at that stroke, slowly",
                        "F = F1/(1 - (1 - F1/F2) s/S)",
                        Numerals.with(gas.force(), Shown.NEWTON)
                                + " out, "
                                + Numerals.with(gas.compressedForce(), Shown.NEWTON)
                                + " in: "
                                + spring.load(),
                        "Ideal gas at constant temperature"),
                gasLimits(gas));
    }

    private String out() {
        boolean out = stroke.longest() >= stroke.law().freeCoordinate();
        return out
                ? "; at "
                        + Numerals.with(stroke.longestAt(), Shown.MILLIMETRE)
                        + " they are fully out and push no more."
                : ".";
    }

    private static List<String> gasLimits(GasSpring gas) {
        List<String> limits = new ArrayList<>();
        double rise = gas.compressedForce() / gas.force();
        limits.add(
                "Slow motion at the temperature the forces were measured at: they change by 1/293 a"
                        + " kelvin, and a fast stroke presses up to "
                        + Numerals.number(Math.pow(rise, 0.4))
                        + " times as hard (n = 1.4).");
        if (rise < LEAST_RISE || rise > MOST_RISE) {
            limits.add(
                    "The force rises by "
                            + Numerals.number(rise)
                            + " over the stroke; 1.2 to 1.6 is usual.");
        }
        limits.add("Rod, seal and tube are not judged: they are their maker's business.");
        return limits;
    }
}
