// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.limits.Heading;
import foldwright.gantry.limits.LimitPoint;
import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.model.GantryState;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Block;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.Guide;
import foldwright.machine.gantry.Legs;
import foldwright.machine.gantry.Preload;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far the bridge skews and the tool strays when it starts, and what acceleration is allowed.
 */
final class SkewChecks {
    private static final double SPACING = 0.060;
    private static final List<String> LIMITS =
            List.of(
                    "Steady acceleration without rail friction. Ringing after a sudden start comes on"
                            + " top; a replay of a toolpath shows it.");

    private final Machine machine;
    private final Gantry gantry;
    private final GantrySweep sweep;

    SkewChecks(Machine machine) {
        this(machine, new GantrySweep(machine.gantry().orElseThrow()));
    }

    SkewChecks(Machine machine, GantrySweep sweep) {
        this.machine = machine;
        this.gantry = machine.gantry().orElseThrow();
        this.sweep = sweep;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        double limit = machine.limits().skew().orElse(Double.NaN);
        Check skew = skew(limit);
        out.add(
                skew.verdict() == Verdict.HOLDS || skew.verdict() == Verdict.UNJUDGED
                        ? skew
                        : skew.with(
                                new Remedies(
                                                machine,
                                                skew.outcome(),
                                                m -> new SkewChecks(m).skew(limit).outcome())
                                        .find(changes())));
        out.add(tool(machine.limits().toolError().orElse(Double.NaN)));
        out.add(allowed());
        return out;
    }

    private static double endToEnd(GantryState s) {
        return Math.abs(s.endToEnd());
    }

    private double asked() {
        return gantry.moves().acceleration();
    }

    private Place place(GantrySweep.Worst w) {
        return Place.anywhere(
                w.way().words() + ", carriage at " + Numerals.with(w.place(), Shown.MILLIMETRE));
    }

    private Check skew(double limit) {
        GantrySweep.Worst worst = sweep.worst(asked(), SkewChecks::endToEnd);
        double span = gantry.legs().span();
        double free = sweep.model().bridgeGuide().freeYaw();
        double stiffness = sweep.model().bridgeGuide().yawStiffness();
        double play = Math.min(worst.size(), free * span);
        Outcome outcome =
                Outcome.of(
                        Amount.of(worst.size(), Shown.MILLIMETRE),
                        Amount.of(limit, Shown.MILLIMETRE),
                        place(worst));
        String finding =
                "The bridge skews "
                        + outcome.required().text()
                        + " from end to end when "
                        + worst.way().words()
                        + " at "
                        + acceleration(asked())
                        + ": play "
                        + Numerals.with(play, Shown.MILLIMETRE)
                        + ", flex "
                        + Numerals.with(worst.size() - play, Shown.MILLIMETRE)
                        + ".";
        double moment = Math.abs(worst.state().guideMoment());
        HandCard card =
                new HandCard(
                        List.of(
                                new HandCard.Step(
                                        "moment on the bridge from belts and inertia",
                                        "M = m_c a B/2 on a single loop",
                                        Numerals.with(moment, Shown.NEWTON_METRE)
                                                + " at the rails"),
                                new HandCard.Step(
                                        "skew from end to end",
                                        "s = B (γ + M/K)",
                                        Numerals.with(span, Shown.MILLIMETRE)
                                                + " × ("
                                                + Numerals.with(free, Shown.MILLIRADIAN)
                                                + " + "
                                                + Numerals.with(moment, Shown.NEWTON_METRE)
                                                + " / "
                                                + Numerals.number(stiffness)
                                                + " N·m/rad) = "
                                                + Numerals.with(
                                                        span * (free + moment / stiffness),
                                                        Shown.MILLIMETRE))),
                        "Own derivation; belt sections as K. Sollmann, M. Jouaneh, D. Lavender, IEEE/ASME"
                                + " Trans. Mechatronics 15(2) 2010, 280-290");
        return check(
                "skew.end", new Check.Text("Skew end to end", finding), outcome, card, curve());
    }

    private Check check(
            String id, Check.Text text, Outcome outcome, HandCard card, Optional<Plot> plot) {
        Grounds grounds =
                new Grounds(
                        List.of(), card, Assumptions.under(machine, "gantry"), List.of(), LIMITS);
        return new Check(id, Question.SKEW, text, outcome, grounds, List.of(), plot);
    }

    private static String acceleration(double a) {
        return Numerals.with(a, Shown.METRE_PER_SECOND_SQUARED);
    }

    /** Skew over the place of the carriage for a start along the bridge. */
    private Optional<Plot> curve() {
        double[] places = sweep.places();
        double[] skew = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            skew[i] = sweep.at(places[i], GantrySweep.Way.ALONG_BRIDGE, asked()).endToEnd();
        }
        return Optional.of(
                new SignedCurve(
                        new HeightPlot.Caption(
                                "Skew end to end", "carriage along the bridge", Shown.MILLIMETRE),
                        Series.of(places),
                        Series.of(skew),
                        machine.limits().skew().orElse(Double.NaN),
                        "clockwise",
                        "counter-clockwise"));
    }

    private Check tool(double limit) {
        GantrySweep.Worst worst = sweep.worst(asked(), s -> s.error().total().size());
        ErrorSplit e = worst.state().error();
        Outcome outcome =
                Outcome.of(
                        Amount.of(worst.size(), Shown.MILLIMETRE),
                        Amount.of(limit, Shown.MILLIMETRE),
                        place(worst));
        String finding =
                "The tool strays "
                        + outcome.required().text()
                        + " when "
                        + worst.way().words()
                        + ": belt stretch "
                        + length(e.beltStretch())
                        + ", skew by play "
                        + length(e.skewPlay())
                        + ", skew by flex "
                        + length(e.skewFlex())
                        + ", blocks "
                        + length(e.blockGive())
                        + ", beam "
                        + length(e.bending())
                        + ".";
        HandCard card =
                Hand.card(
                        "parts add up as vectors",
                        "e = stretch + skew + blocks + beam",
                        outcome.required().text(),
                        "Split of the gantry's own statics");
        return check(
                "skew.tool",
                new Check.Text("Tool beside its command", finding),
                outcome,
                card,
                Optional.empty());
    }

    private static String length(ErrorSplit.Offset o) {
        return Numerals.with(o.size(), Shown.MILLIMETRE);
    }

    /** The largest acceleration that keeps every limit, by the direction that allows least. */
    private Check allowed() {
        GantryLimits limits = new GantryLimits(machine);
        List<LimitPoint> points = limits.map();
        Map<Heading, LimitPoint> least = GantryLimits.least(points);
        LimitPoint worst =
                least.values().stream()
                        .min(Comparator.comparingDouble(LimitPoint::acceleration))
                        .orElseThrow();
        Outcome outcome =
                Outcome.of(
                        Amount.of(asked(), Shown.METRE_PER_SECOND_SQUARED),
                        Amount.of(worst.acceleration(), Shown.METRE_PER_SECOND_SQUARED),
                        Place.anywhere(
                                "towards "
                                        + worst.heading().word()
                                        + ", "
                                        + worst.setBy().words()));
        String finding =
                worst.acceleration() == 0
                        ? "No acceleration keeps every limit: standing still, the "
                                + worst.setBy().words()
                                + " is beyond its own, play counted."
                        : "Every limit is kept up to "
                                + outcome.available().text()
                                + "; the "
                                + worst.setBy().words()
                                + " sets it. Along the bridge "
                                + both(least, Heading.RIGHT, Heading.LEFT)
                                + ", along the rails "
                                + both(least, Heading.BACK, Heading.FRONT)
                                + ".";
        HandCard card =
                Hand.card(
                        "inverted from the skew",
                        "a = K (s/B - γ) / (m_c B/2) on a single loop",
                        outcome.available().text(),
                        "The skew formula solved for a; belts, motors and blocks by the gantry's"
                                + " statics");
        return check(
                "skew.acceleration",
                new Check.Text("Acceleration allowed", finding),
                outcome,
                card,
                Optional.of(limits.plot(points)));
    }

    private static String both(Map<Heading, LimitPoint> least, Heading a, Heading b) {
        return acceleration(Math.min(least.get(a).acceleration(), least.get(b).acceleration()));
    }

    private List<Change> changes() {
        List<Change> out = new ArrayList<>();
        out.add(
                new Change(
                        "half the acceleration",
                        m ->
                                Edit.with(
                                        m,
                                        "gantry.moves.acceleration",
                                        0.5 * m.gantry().orElseThrow().moves().acceleration())));
        out.add(
                new Change(
                        "carriage a fifth lighter",
                        m ->
                                Edit.with(
                                        m,
                                        "gantry.carriage.mass",
                                        0.8 * m.gantry().orElseThrow().carriage().mass())));
        Guide guide = gantry.legs().guide();
        if (guide.blocks() == 1) {
            out.add(new Change("two blocks 60 mm apart on metal brackets", SkewChecks::twoBlocks));
        }
        gantry.legs()
                .yawStiffness()
                .ifPresent(
                        k ->
                                out.add(
                                        new Change(
                                                "brackets and blocks four times as stiff",
                                                m ->
                                                        Edit.with(
                                                                m,
                                                                "gantry.legs.yawStiffness",
                                                                4 * k))));
        return out;
    }

    /**
     * Two lightly preloaded blocks on a metal bracket instead of one: no play, and the yaw
     * stiffness k s²/2 of the pair by its spacing.
     */
    private static Machine twoBlocks(Machine m) {
        Legs legs = m.gantry().orElseThrow().legs();
        Guide one = legs.guide();
        Block block =
                new Block(
                        one.block().ballLength(),
                        one.block().lateralStiffness(),
                        one.block().yawStiffness(),
                        0,
                        one.block().staticMoment(),
                        one.block().staticRating());
        Guide two =
                new Guide(
                        one.size(), one.length(), 2, SPACING, block, Preload.LIGHT, one.friction());
        double pair = 0.5 * block.lateralStiffness() * SPACING * SPACING;
        Machine out = Edit.with(m, "gantry.legs.guide", two);
        return legs.yawStiffness().isEmpty()
                ? out
                : Edit.with(
                        out,
                        "gantry.legs.yawStiffness",
                        Math.max(pair, legs.yawStiffness().getAsDouble()));
    }
}
