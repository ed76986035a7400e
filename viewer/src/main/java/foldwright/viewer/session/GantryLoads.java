// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.gantry.model.BeltFacts;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.RailLoad;
import foldwright.machine.gantry.Block;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.GantryMotor;
import foldwright.machine.gantry.Guide;
import foldwright.study.GantrySweep;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.viewer.scene.BeltNames;
import foldwright.viewer.scene.GantryMotion;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What belts, rails and motors of a gantry carry in one instant, and what of it is pretension,
 * acceleration and friction.
 *
 * <p>The instant is the worst of the skew check: the asked acceleration, the carriage where the
 * bridge skews most, no rail friction. Scales hold over all places and ways of that sweep, so that
 * ink keeps its meaning. {@link #at} shows any other instant on the same scales.
 */
public final class GantryLoads {
    /** A tension and what it is made of [N]. */
    public record Tension(double total, double rest, double friction, double frequency) {
        /** What the acceleration adds. */
        public double acceleration() {
            return total - rest;
        }

        private static Tension between(Tension a, Tension b) {
            return new Tension(
                    (a.total + b.total) / 2,
                    (a.rest + b.rest) / 2,
                    (a.friction + b.friction) / 2,
                    Double.NaN);
        }
    }

    /** Ends of the scales, for all instants [N, N m, N]. */
    private record Scales(double tension, double moment, double side) {}

    private final Gantry gantry;
    private final GantryModel model;
    private final GantryState state;
    private final BeltFacts rest;
    private final BeltFacts friction;
    private final Scales scales;
    private final double place;
    private final String words;
    private final String instant;
    private final Map<String, Tension> tensions = new LinkedHashMap<>();

    private GantryLoads(
            Gantry gantry, GantryModel model, GantryState state, Instant instant, Scales scales) {
        this.gantry = gantry;
        this.model = model;
        this.state = state;
        this.rest = instant.rest;
        this.friction = instant.friction;
        this.scales = scales;
        this.place = instant.place;
        this.words = instant.words;
        double a = gantry.moves().acceleration();
        this.instant =
                "as "
                        + words
                        + " at "
                        + Numerals.with(a, Shown.METRE_PER_SECOND_SQUARED)
                        + ", where it skews most";
        fill();
    }

    /** What an instant is compared with. */
    private record Instant(BeltFacts rest, BeltFacts friction, double place, String words) {}

    /** The worst instant of the skew check; empty where the gantry finds no balance. */
    public static Optional<GantryLoads> of(Gantry gantry) {
        try {
            return Optional.of(worst(gantry));
        } catch (IllegalStateException e) {
            // The skew check says why; the picture then shows no gantry loads.
            return Optional.empty();
        }
    }

    private static GantryLoads worst(Gantry gantry) {
        GantrySweep sweep = new GantrySweep(gantry);
        double a = gantry.moves().acceleration();
        GantrySweep.Worst worst = sweep.worst(a, s -> Math.abs(s.endToEnd()));
        Load load = worst.way().load(worst.acceleration());
        Load rubbing =
                new Load(
                        load.ax(),
                        load.ay(),
                        Math.signum(load.ax()) * gantry.bridge().guide().friction(),
                        Math.signum(load.ay()) * 2 * gantry.legs().guide().friction(),
                        0,
                        0);
        GantryState still = sweep.at(worst.place(), Load.NONE);
        GantryState rubbed = sweep.at(worst.place(), rubbing);
        GantryModel model = sweep.model();
        Instant instant =
                new Instant(
                        BeltFacts.of(model, still),
                        BeltFacts.of(model, rubbed),
                        worst.place(),
                        worst.way().words());
        return new GantryLoads(gantry, model, worst.state(), instant, scales(sweep, a, still));
    }

    private static Scales scales(GantrySweep sweep, double a, GantryState rest) {
        double tension = 0;
        double moment = 0;
        double side = 0;
        for (double at : sweep.places()) {
            for (GantrySweep.Way way : GantrySweep.Way.values()) {
                for (int sign = -1; sign <= 1; sign += 2) {
                    GantryState s = sweep.at(at, way, sign * a);
                    for (int i = 0; i < s.tensions().size(); i++) {
                        double off = s.tensions().get(i) - rest.tensions().get(i);
                        tension = Math.max(tension, Math.abs(off));
                    }
                    RailLoad left = s.blocks().left();
                    RailLoad right = s.blocks().right();
                    moment = Math.max(moment, Math.max(size(left.yaw()), size(right.yaw())));
                    side = Math.max(side, Math.max(size(left.side()), size(right.side())));
                }
            }
        }
        return new Scales(tension, moment, side);
    }

    private static double size(double value) {
        return Math.abs(value);
    }

    /** Another instant of the same gantry on the same scales, as in a replay. */
    public GantryLoads at(GantryState other) {
        return new GantryLoads(
                gantry, model, other, new Instant(rest, friction, place, words), scales);
    }

    private void fill() {
        BeltFacts now = BeltFacts.of(model, state);
        Map<String, Tension> arriving = new HashMap<>();
        Map<String, Tension> leaving = new HashMap<>();
        for (int i = 0; i < now.strands().size(); i++) {
            BeltFacts.Strand s = now.strands().get(i);
            double still = rest.strands().get(i).tension();
            double rubbed = friction.strands().get(i).tension();
            Tension t = new Tension(s.tension(), still, rubbed - s.tension(), s.frequency());
            tensions.put(BeltNames.strand(s.belt(), s.from(), s.to()), t);
            leaving.put(BeltNames.wrap(s.belt(), s.from()), t);
            arriving.put(BeltNames.wrap(s.belt(), s.to()), t);
        }
        for (Map.Entry<String, Tension> e : leaving.entrySet()) {
            Tension in = arriving.get(e.getKey());
            if (in != null) {
                tensions.put(e.getKey(), Tension.between(in, e.getValue()));
            }
        }
    }

    /** Where the carriage stands and how the bridge lies; the skew is the true one. */
    public GantryMotion.Place pose() {
        return new GantryMotion.Place(place, gantry.legs().travel().middle(), state.skew());
    }

    /** What starts, e.g. "the carriage starts along the bridge". */
    public String words() {
        return words;
    }

    /** The instant in a sentence for the sheet. */
    String instant() {
        return instant;
    }

    /** The instant shown. */
    public GantryState state() {
        return state;
    }

    /** Tension of a strand or wrap by the part's name. */
    public Optional<Tension> tension(String part) {
        return Optional.ofNullable(tensions.get(part));
    }

    /** Load of the leg rail a part belongs to, by the part's name. */
    public Optional<RailLoad> rail(String part) {
        if (part.startsWith("left leg block") || part.equals("left rail")) {
            return Optional.of(state.blocks().left());
        }
        return part.startsWith("right leg block") || part.equals("right rail")
                ? Optional.of(state.blocks().right())
                : Optional.empty();
    }

    /** Torque of a motor by its name [N m]. */
    public Optional<Double> torque(String motor) {
        for (int i = 0; i < gantry.motors().size(); i++) {
            if (gantry.motors().get(i).name().equals(motor)) {
                return Optional.of(state.motorTorques().get(i));
            }
        }
        return Optional.empty();
    }

    /** The field of an overlay of the gantry. */
    Optional<LoadField> field(Overlay overlay) {
        Map<String, Series> out = new HashMap<>();
        double least = 0;
        switch (overlay) {
            case BELT_TENSION -> {
                tensions.forEach((part, t) -> out.put(part, Series.of(t.acceleration())));
                least = scales.tension;
            }
            case RAIL_MOMENT -> {
                rails(out, RailLoad::yaw);
                least = scales.moment;
            }
            case RAIL_FORCE -> {
                rails(out, RailLoad::side);
                least = scales.side;
            }
            default -> {}
        }
        return LoadField.steady(overlay, out, least);
    }

    private void rails(
            Map<String, Series> out, java.util.function.ToDoubleFunction<RailLoad> number) {
        for (int i = 1; i <= gantry.legs().guide().blocks(); i++) {
            out.put("left leg block " + i, Series.of(number.applyAsDouble(state.blocks().left())));
            out.put(
                    "right leg block " + i,
                    Series.of(number.applyAsDouble(state.blocks().right())));
        }
    }

    /** Load over what may be carried, for blocks and motors with a stated limit. */
    Map<String, Double> used() {
        Map<String, Double> out = new HashMap<>();
        Guide legs = gantry.legs().guide();
        for (int i = 1; i <= legs.blocks(); i++) {
            put(out, "left leg block " + i, block(legs, state.blocks().left()));
            put(out, "right leg block " + i, block(legs, state.blocks().right()));
        }
        for (GantryMotor m : gantry.motors()) {
            double torque = torque(m.name()).orElse(Double.NaN);
            put(out, m.name(), Math.abs(torque) / m.stepper().holdingTorque());
        }
        return out;
    }

    private static void put(Map<String, Double> out, String part, double share) {
        if (!Double.isNaN(share)) {
            out.put(part, share);
        }
    }

    /**
     * Share used of one block of a rail: yaw moment against its static moment where it stands
     * alone, else its part of the side force and of the pair against the static rating.
     */
    static double block(Guide guide, RailLoad load) {
        Block b = guide.block();
        if (guide.blocks() == 1) {
            return b.staticMoment().isPresent()
                    ? Math.abs(load.yaw()) / b.staticMoment().getAsDouble()
                    : Double.NaN;
        }
        return b.staticRating().isPresent()
                ? force(guide, load) / b.staticRating().getAsDouble()
                : Double.NaN;
    }

    /** Side force of the most loaded of several blocks, their pair included [N]. */
    static double force(Guide guide, RailLoad load) {
        double even = Math.abs(load.side()) / guide.blocks();
        return guide.spacing() > 0 && guide.blocks() > 1
                ? even + Math.abs(load.yaw()) / guide.spacing()
                : even;
    }
}
