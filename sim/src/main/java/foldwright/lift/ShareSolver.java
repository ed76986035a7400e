// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.ArmPart;
import foldwright.lift.Linkage.PinPart;
import foldwright.lift.Linkage.SliderPart;
import foldwright.lift.PartShares.Share;
import foldwright.lift.PartShares.Split;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.State;
import foldwright.mechanics.force.PointLoad;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Superposition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits what pins and arms carry in a balance by cause: the loads of every cause act alone on the
 * lift as it stands there, and pins and arms are read each time.
 */
final class ShareSolver {
    private final LiftModel model;
    private final PartLoads parts;
    private final State pose;
    private final Equilibrium whole;
    private final double gravity;
    private final List<Source> sources = new ArrayList<>();

    /**
     * A cause with what it makes joints carry.
     *
     * @param alone multipliers of its loads alone
     * @param gravity that counts for weights within a part [m/s²]
     */
    private record Source(Cause cause, String name, Equilibrium alone, double gravity) {}

    private ShareSolver(LiftModel model, Equilibrium whole) {
        this.model = model;
        this.whole = whole;
        parts = new PartLoads(model);
        pose = whole.state();
        gravity = -model.mechanism().gravity().z();
        Superposition loads = new Superposition(model.mechanism(), whole);
        weights(loads);
        springs(loads);
        frictions(loads);
    }

    /** The shares in a balance of the model at that height. */
    static PartShares of(LiftModel model, Equilibrium whole, double height, Direction way) {
        ShareSolver solver = new ShareSolver(model, whole);
        return new PartShares(height, way, solver.pins(), solver.arms());
    }

    private void weights(Superposition loads) {
        Body deck = model.linkage().deck();
        for (DeckMass.Part p : DeckMass.parts(model.machine())) {
            PointLoad weight =
                    new PointLoad(p.name(), deck.marker(p.at())).force(0, 0, -p.mass() * gravity);
            add(Cause.DECK, p.name(), loads.under(weight::apply), 0);
        }
        add(Cause.ARMS, "arms", loads.under(this::armWeights), gravity);
    }

    private void armWeights(State s, double[] load) {
        for (ArmPart a : model.linkage().arms()) {
            load[6 * a.body().index() + 2] -= a.body().mass().mass() * gravity;
        }
    }

    /** Springs of one name are one cause. */
    private void springs(Superposition loads) {
        Map<String, List<SpringPart>> named = new LinkedHashMap<>();
        for (SpringPart p : model.springs()) {
            named.computeIfAbsent(p.spring().name(), n -> new ArrayList<>()).add(p);
        }
        named.forEach(
                (name, springs) ->
                        add(
                                Cause.SPRINGS,
                                name,
                                loads.under(
                                        (s, load) ->
                                                springs.forEach(p -> p.force().apply(s, load))),
                                0));
    }

    private void frictions(Superposition loads) {
        List<Friction> pins = model.linkage().pins().stream().map(PinPart::friction).toList();
        List<Friction> guides =
                model.linkage().sliders().stream()
                        .map(SliderPart::frictions)
                        .flatMap(List::stream)
                        .toList();
        add(Cause.PINS, "friction in pins", loads.under(pins), 0);
        add(Cause.GUIDES, "friction in guides", loads.under(guides), 0);
    }

    private void add(Cause cause, String name, Equilibrium alone, double counts) {
        if (!alone.found()) {
            throw new IllegalStateException(
                    "no balance of \"" + name + "\" alone: " + alone.failure().orElseThrow());
        }
        sources.add(new Source(cause, name, alone, counts));
    }

    private Map<String, Split> pins() {
        Map<String, Split> out = new HashMap<>();
        for (PinReader pin : parts.pins()) {
            pin.read(whole, pose);
            double total = Math.hypot(pin.along(), pin.up());
            double x = total > 0 ? pin.along() / total : 0;
            double z = total > 0 ? pin.up() / total : 0;
            List<Share> shares = new ArrayList<>();
            for (Source c : sources) {
                pin.read(c.alone, pose);
                shares.add(new Share(c.cause, c.name, pin.along() * x + pin.up() * z));
            }
            out.put(pin.part().name(), split(total, shares));
        }
        return out;
    }

    private Map<String, Split> arms() {
        Map<String, ArmReader.Half> halves = new HashMap<>();
        Map<String, Double> totals = new HashMap<>();
        readPins(whole);
        for (ArmReader arm : parts.arms()) {
            ArmReader.Half half = arm.worse(whole, pose, gravity);
            halves.put(arm.part().name(), half);
            totals.put(arm.part().name(), arm.bending(half, whole, pose, gravity));
        }
        Map<String, List<Share>> shares = new HashMap<>();
        for (Source c : sources) {
            readPins(c.alone);
            for (ArmReader arm : parts.arms()) {
                String name = arm.part().name();
                double own = arm.bending(halves.get(name), c.alone, pose, c.gravity);
                shares.computeIfAbsent(name, n -> new ArrayList<>())
                        .add(new Share(c.cause, c.name, Math.signum(totals.get(name)) * own));
            }
        }
        Map<String, Split> out = new HashMap<>();
        shares.forEach((name, list) -> out.put(name, split(Math.abs(totals.get(name)), list)));
        return out;
    }

    private void readPins(Equilibrium balance) {
        parts.pins().forEach(p -> p.read(balance, pose));
    }

    /** With what is left of the whole: what joints carry without any load. */
    private static Split split(double total, List<Share> shares) {
        double left = total - shares.stream().mapToDouble(Share::value).sum();
        List<Share> all = new ArrayList<>(shares);
        all.add(new Share(Cause.WIND_UP, "joints out of step", left));
        return new Split(total, all);
    }
}
