// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.elements.bearing.DeepGrooveBearing;
import foldwright.machine.Machine;
import foldwright.machine.linkage.Arm;
import foldwright.machine.linkage.BallBearing;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.CrossBar;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.SliderEnd;
import foldwright.machine.linkage.SliderKind;
import foldwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Arms, pins with their bearings, sliding ends, cross bars and latch. */
final class LiftParts {
    private final Machine machine;
    private final Lift lift;
    private final Uses uses;
    private final List<OrderLine> out = new ArrayList<>();

    LiftParts(Machine machine, Uses uses) {
        this.machine = machine;
        this.lift = machine.lift();
        this.uses = uses;
    }

    List<OrderLine> lines() {
        arms();
        pins();
        sliders();
        crossBars();
        machine.latch()
                .ifPresent(
                        l ->
                                add(
                                        1,
                                        "latch",
                                        "to carry "
                                                + Sizes.given(Dimension.FORCE, l.allowedForce())
                                                + " upward",
                                        uses.of("fold.latch"),
                                        "kind and fixing"));
        return out;
    }

    private void add(
            int count, String part, String size, Optional<OrderLine.Use> use, String... open) {
        out.add(new OrderLine(OrderLine.Group.LIFT, count, part, size, use, List.of(open)));
    }

    private void arms() {
        Arm arm = lift.arm();
        String size =
                Sizes.stock(arm.section(), arm.material())
                        + ", holes "
                        + Sizes.length(arm.length())
                        + " apart, one more at "
                        + Sizes.length(arm.centrePin() * arm.length());
        add(
                lift.arms(),
                "arm",
                size,
                uses.of("order.arms"),
                "diameter of the holes, shape of ends");
    }

    /** How many pins of each kind, in the order of the places from below. */
    private Map<Pin, Integer> pinsByKind() {
        Map<Pin, Integer> count = new LinkedHashMap<>();
        for (PinPlace place : PinPlace.values()) {
            int here = count(place);
            if (here > 0) {
                count.merge(lift.pinAt(place), here, Integer::sum);
            }
        }
        return count;
    }

    /** Pins at a place, both sides together. */
    private int count(PinPlace place) {
        return switch (place) {
            case BASE_FIXED, BASE_SLIDER, DECK_FIXED, DECK_SLIDER -> 2;
            case CENTRE -> 2 * lift.stages();
            case JUNCTION -> 4 * (lift.stages() - 1);
        };
    }

    private void pins() {
        Pin loaded = lift.pinAt(PinPlace.CENTRE);
        pinsByKind()
                .forEach(
                        (pin, count) -> {
                            add(
                                    count,
                                    "pin",
                                    Sizes.length(pin.diameter())
                                            + ", held over "
                                            + Sizes.length(pin.spacing()),
                                    Optional.empty(),
                                    "length, how it is kept, steel and fit");
                            bearing(
                                    pin,
                                    count,
                                    pin.equals(loaded) ? uses.of("order.pins") : Optional.empty());
                        });
    }

    private void bearing(Pin pin, int pins, Optional<OrderLine.Use> use) {
        if (pin.bearing() instanceof Bush bush) {
            String size =
                    bush.material()
                            + ", bore "
                            + Sizes.length(pin.diameter())
                            + ", "
                            + Sizes.length(bush.length())
                            + " long, clearance "
                            + Sizes.length(bush.clearance());
            add(pins, "bush", size, use, "outside diameter");
        } else if (pin.bearing() instanceof BallBearing ball) {
            Optional<DeepGrooveBearing> known = ball.designation().flatMap(DeepGrooveBearing::find);
            String rating =
                    ball.staticRating().isPresent()
                            ? ", static rating "
                                    + Sizes.given(
                                            Dimension.FORCE, ball.staticRating().getAsDouble())
                            : "";
            String bore = "bore " + Sizes.length(pin.diameter());
            String size =
                    known.map(b -> b.designation() + ", " + bore + outer(b))
                            .orElse(ball.designation().orElse(bore));
            add(
                    pins * ball.count(),
                    "ball bearing",
                    size + rating,
                    use,
                    known.isPresent()
                            ? "shields, flange"
                            : "designation, outside diameter, flange");
        }
    }

    private static String outer(DeepGrooveBearing b) {
        return ", outside " + Sizes.length(b.outside()) + ", " + Sizes.length(b.width()) + " wide";
    }

    private void sliders() {
        SliderEnd base = lift.sliders().base();
        SliderEnd deck = lift.sliders().atDeck();
        if (base.equals(deck)) {
            slider(4, base, "base and deck");
        } else {
            slider(2, base, "base");
            slider(2, deck, "deck");
        }
    }

    private void slider(int count, SliderEnd end, String where) {
        boolean rollers = end.kind() == SliderKind.ROLLERS;
        String size =
                "in "
                        + where
                        + ", "
                        + (rollers ? "on rollers" : "sliding")
                        + ", guided over "
                        + Sizes.length(end.guideLength());
        add(
                count,
                "sliding end",
                size,
                Optional.empty(),
                rollers ? "size of the rollers, track" : "sliding pair, track");
    }

    private void crossBars() {
        Map<CrossBar, Integer> count = new LinkedHashMap<>();
        for (CrossBar bar : lift.crossBars()) {
            // Bars of one size are one line wherever they are.
            count.merge(
                    new CrossBar(PinPlace.BASE_SLIDER, 1, bar.section(), bar.material()),
                    1,
                    Integer::sum);
        }
        count.forEach(
                (bar, n) ->
                        add(
                                n,
                                "cross bar",
                                Sizes.stock(bar.section(), bar.material())
                                        + ", "
                                        + Sizes.length(lift.width())
                                        + " between the middles of the sides",
                                Optional.empty(),
                                Sizes.isPlain(bar.section())
                                        ? "ends"
                                        : "shape of the profile, ends"));
    }
}
