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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How far the bridge skews and the tool strays when it starts, and what acceleration is allowed.
 */
final class SkewChecks {
    private static final double SPACING = 0.060;

    /** Parts of the tool's error below this are not told [m]. */
    private static final double TELLABLE = 0.5e-6;

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
        return Place.anywhere(w.words());
    }

    private Check skew(double limit) {
        GantrySweep.Worst worst = sweep.worst(asked(), SkewChecks::endToEnd);
        double play =
                Math.min(
                        worst.size(), sweep.model().bridgeGuide().freeYaw() * gantry.legs().span());
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
        return check(
                "skew.end",
                new Check.Text("Skew end to end", finding),
                outcome,
                new SkewSums(gantry, sweep.model()).skew(worst),
                Optional.of(curve(worst)));
    }

    private Check check(
            String id, Check.Text text, Outcome outcome, HandCard card, Optional<Plot> plot) {
        Grounds grounds =
                new Grounds(
                        Optional.empty(),
                        card,
                        Assumptions.under(machine, "gantry"),
                        List.of(),
                        LIMITS);
        return new Check(id, Question.SKEW, text, outcome, grounds, List.of(), plot);
    }

    private static String acceleration(double a) {
        return Numerals.with(a, Shown.METRE_PER_SECOND_SQUARED);
    }

    /** Skew over the place of the carriage under the acceleration that skews most. */
    private Plot curve(GantrySweep.Worst worst) {
        double[] skew = sweep.along(worst).stream().mapToDouble(GantryState::endToEnd).toArray();
        return new SignedCurve(
                new HeightPlot.Caption("Skew end to end", worst.way().words(), Shown.MILLIMETRE),
                new SignedCurve.Along("carriage", Series.of(sweep.places())),
                Series.of(skew),
                machine.limits().skew().orElse(Double.NaN),
                "clockwise",
                "counter-clockwise");
    }

    private Check tool(double limit) {
        GantrySweep.Worst worst = sweep.worst(asked(), s -> s.error().total().size());
        Outcome outcome =
                Outcome.of(
                        Amount.of(worst.size(), Shown.MILLIMETRE),
                        Amount.of(limit, Shown.MILLIMETRE),
                        place(worst));
        String parts = parts(worst.state().error());
        String finding =
                "The tool strays "
                        + outcome.required().text()
                        + " when "
                        + worst.way().words()
                        + (parts.isEmpty() ? "." : ": " + parts + ".");
        HandCard card =
                Hand.card(
                        "parts with their directions; those under 0.0005 mm left out",
                        "",
                        parts.isEmpty()
                                ? outcome.required().text()
                                : parts + ": together " + outcome.required().text(),
                        "Split of the gantry's own statics");
        return check(
                "skew.tool",
                new Check.Text("Tool beside its command", finding),
                outcome,
                card,
                Optional.empty());
    }

    /** What the tool's error is made of, the largest first. */
    private static String parts(ErrorSplit e) {
        Map<String, ErrorSplit.Offset> parts = new LinkedHashMap<>();
        parts.put("belt stretch", e.beltStretch());
        parts.put("motors behind their commands", e.motorLag());
        parts.put("rails out of square", e.squareness());
        parts.put("skew by play", e.skewPlay());
        parts.put("skew by flex", e.skewFlex());
        parts.put("blocks", e.blockGive());
        parts.put("beam", e.bending());
        parts.put("carriage turning on its rail", e.carriageTwist());
        return parts.entrySet().stream()
                .filter(p -> p.getValue().size() >= TELLABLE)
                .sorted(Comparator.comparingDouble(p -> -p.getValue().size()))
                .map(p -> p.getKey() + " " + length(p.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String length(ErrorSplit.Offset o) {
        return Numerals.with(o.size(), Shown.MILLIMETRE);
    }

    /** The largest acceleration that keeps every limit, by the direction that allows least. */
    private Check allowed() {
        GantryLimits limits = new GantryLimits(machine);
        Map<Heading, LimitPoint> least = limits.least();
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
                                        + worst.heading().signed()
                                        + ", "
                                        + worst.setBy().words()));
        String finding =
                worst.acceleration() == 0
                        ? "No acceleration keeps every limit: even at rest the "
                                + worst.setBy().words()
                                + " is beyond what is allowed, play counted."
                        : "Every limit is kept up to "
                                + outcome.available().text()
                                + "; the "
                                + worst.setBy().words()
                                + " sets it. Along the bridge "
                                + both(least, Heading.RIGHT, Heading.LEFT)
                                + ", along the rails "
                                + both(least, Heading.BACK, Heading.FRONT)
                                + ".";
        return check(
                "skew.acceleration",
                new Check.Text("Acceleration allowed", finding),
                outcome,
                new SkewSums(gantry, sweep.model())
                        .allowed(machine.limits().skew().orElse(Double.NaN), worst),
                Optional.of(limits.plot(least)));
    }

    private static String both(Map<Heading, LimitPoint> least, Heading a, Heading b) {
        return acceleration(Math.min(least.get(a).acceleration(), least.get(b).acceleration()));
    }

    private List<Change> changes() {
        List<Change> out = new ArrayList<>();
        out.add(GantryChanges.slower("half the acceleration", 0.5));
        out.add(GantryChanges.lighterCarriage());
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
