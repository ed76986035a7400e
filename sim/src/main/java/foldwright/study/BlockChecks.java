// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.model.BlockLoads;
import foldwright.gantry.model.GantryState;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Block;
import foldwright.machine.gantry.Gantry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Load of the rail blocks under the asked acceleration against their static ratings, moment and
 * side force; the one with less in reserve is told. A block without either rating is not checked.
 */
final class BlockChecks {
    private final Machine machine;
    private final Gantry gantry;
    private final GantrySweep sweep;

    BlockChecks(Machine machine, GantrySweep sweep) {
        this.machine = machine;
        gantry = machine.gantry().orElseThrow();
        this.sweep = sweep;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        Block leg = gantry.legs().guide().block();
        Block carriage = gantry.bridge().guide().block();
        tightest(
                        load(
                                "yaw moment",
                                BlockLoads::legYaw,
                                leg.staticMoment(),
                                Shown.NEWTON_METRE),
                        load("side force", BlockLoads::legSide, leg.staticRating(), Shown.NEWTON))
                .map(l -> check("order.leg-block", "Leg block", l))
                .ifPresent(out::add);
        tightest(
                        load(
                                "moment",
                                b -> Math.max(b.carriageYaw(), b.carriageTilt()),
                                carriage.staticMoment(),
                                Shown.NEWTON_METRE),
                        load(
                                "side force",
                                BlockLoads::carriageSide,
                                carriage.staticRating(),
                                Shown.NEWTON))
                .map(l -> check("order.bridge-block", "Bridge block", l))
                .ifPresent(out::add);
        return out;
    }

    /** One kind of load where it is largest, with what it may be. */
    private record Loaded(String kind, Outcome outcome) {}

    private static Optional<Loaded> tightest(Optional<Loaded> a, Optional<Loaded> b) {
        return Stream.of(a, b)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(l -> l.outcome().margin()));
    }

    private Optional<Loaded> load(
            String kind, ToDoubleFunction<BlockLoads> load, OptionalDouble allowed, Shown unit) {
        if (allowed.isEmpty()) {
            return Optional.empty();
        }
        ToDoubleFunction<GantryState> size = s -> load.applyAsDouble(s.blocks());
        GantrySweep.Worst worst = sweep.worst(gantry.moves().acceleration(), size);
        Place place = Place.anywhere(worst.words());
        return Optional.of(
                new Loaded(
                        kind,
                        Outcome.of(
                                Amount.of(worst.size(), unit),
                                Amount.of(allowed.getAsDouble(), unit),
                                place)));
    }

    private Check check(String id, String title, Loaded l) {
        Outcome o = l.outcome();
        String finding =
                "A "
                        + title.toLowerCase(Locale.ROOT)
                        + " takes a "
                        + l.kind()
                        + " of "
                        + o.required().text()
                        + "; its static rating is "
                        + o.available().text()
                        + ".";
        HandCard card =
                Hand.card(
                        "what is in reserve",
                        "f = rating / load",
                        o.available().text()
                                + " / "
                                + o.required().text()
                                + " = "
                                + Numerals.number(o.margin()),
                        "static safety factor as in ISO 14728-2; loads from the gantry's balance");
        Grounds grounds =
                new Grounds(
                        Optional.empty(),
                        card,
                        Assumptions.under(machine, "gantry"),
                        List.of(),
                        List.of(
                                "Steady acceleration; ringing adds to it. Weight, the process"
                                        + " force and forces of assembly are not in it."));
        return new Check(
                id,
                Question.ORDER,
                new Check.Text(title, finding),
                o,
                grounds,
                List.of(),
                Optional.empty());
    }
}
