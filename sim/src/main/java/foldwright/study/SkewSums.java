// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.limits.Criterion;
import foldwright.gantry.limits.LimitPoint;
import foldwright.gantry.model.GantryModel;
import foldwright.machine.gantry.Gantry;
import foldwright.study.HandCard.Step;
import java.util.ArrayList;
import java.util.List;

/** Hand sums of skew and of the acceleration it allows, with the machine's own numbers. */
final class SkewSums {
    private static final String SKEW_SOURCE =
            "Own derivation; belt sections as K. Sollmann, M. Jouaneh, D. Lavender, IEEE/ASME Trans."
                    + " Mechatronics 15(2) 2010, 280-290";

    private final Gantry gantry;
    private final double span;
    private final double free;
    private final double stiffness;

    SkewSums(Gantry gantry, GantryModel model) {
        this.gantry = gantry;
        span = gantry.legs().span();
        free = model.bridgeGuide().freeYaw();
        stiffness = model.bridgeGuide().yawStiffness();
    }

    /** Moment on the bridge, and the skew it gives against the blocks of both legs. */
    HandCard skew(GantrySweep.Worst worst) {
        double moment = Math.abs(worst.state().guideMoment());
        List<Step> steps = new ArrayList<>();
        if (oneLoop() && worst.way() == GantrySweep.Way.ALONG_BRIDGE) {
            double mass = gantry.carriage().mass();
            double a = Math.abs(worst.acceleration());
            steps.add(
                    new Step(
                            "moment of the single belt on the bridge, belt and idlers weightless",
                            "M = m_c a B/2",
                            Numerals.with(mass, Shown.KILOGRAM)
                                    + " × "
                                    + acceleration(a)
                                    + " × "
                                    + length(span)
                                    + "/2 = "
                                    + moment(0.5 * mass * a * span)));
            steps.add(new Step("with their masses, from the balance", "", "M = " + moment(moment)));
        } else {
            steps.add(
                    new Step(
                            "moment on the bridge, from the balance of belts and masses",
                            "",
                            "M = " + moment(moment)));
        }
        steps.add(
                new Step(
                        "skew from end to end: play and flex of the blocks",
                        "s = B (γ + M/K)",
                        length(span)
                                + " × ("
                                + angle(free)
                                + " + "
                                + moment(moment)
                                + " / "
                                + stiffness()
                                + ") = "
                                + length(span * (free + moment / stiffness))));
        return new HandCard(steps, SKEW_SOURCE);
    }

    /** What the skew alone allows along the bridge, where the short formula holds. */
    HandCard allowed(double limit, LimitPoint least) {
        List<Step> steps = new ArrayList<>();
        boolean formula = oneLoop() && limit > 0 && least.setBy() == Criterion.SKEW;
        if (formula) {
            steps.add(limit / span > free ? inverted(limit) : none(limit));
        }
        if (!formula || limit / span > free) {
            steps.add(
                    new Step(
                            "the least of eight directions and nine places, every limit watched",
                            "",
                            "a = " + acceleration(least.acceleration())));
        }
        return new HandCard(
                steps,
                formula
                        ? "The skew formula solved for a; the search by the gantry's statics, belts"
                                + " and idlers with their masses"
                        : "Search by the gantry's statics; foldwright limits tells each direction");
    }

    private Step inverted(double limit) {
        double mass = gantry.carriage().mass();
        return new Step(
                "along the bridge by skew alone, belt and idlers weightless",
                "a = K (s/B - γ)/(m_c B/2)",
                stiffness()
                        + " × ("
                        + length(limit)
                        + "/"
                        + length(span)
                        + " - "
                        + angle(free)
                        + ")/("
                        + Numerals.with(mass, Shown.KILOGRAM)
                        + " × "
                        + length(span)
                        + "/2) = "
                        + acceleration(stiffness * (limit / span - free) / (mass * span / 2)));
    }

    private Step none(double limit) {
        return new Step(
                "play alone skews more than is allowed",
                "",
                "γ = "
                        + angle(free)
                        + ", s/B = "
                        + length(limit)
                        + "/"
                        + length(span)
                        + " = "
                        + angle(limit / span));
    }

    private boolean oneLoop() {
        return gantry.belts().size() == 1;
    }

    private String stiffness() {
        return Numerals.with(stiffness, Shown.NEWTON_METRE_PER_RADIAN);
    }

    private static String acceleration(double a) {
        return Numerals.with(a, Shown.METRE_PER_SECOND_SQUARED);
    }

    private static String length(double metres) {
        return Numerals.with(metres, Shown.MILLIMETRE);
    }

    private static String angle(double radians) {
        return Numerals.with(radians, Shown.MILLIRADIAN);
    }

    private static String moment(double m) {
        return Numerals.with(m, Shown.NEWTON_METRE);
    }
}
