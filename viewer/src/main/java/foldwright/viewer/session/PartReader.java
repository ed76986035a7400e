// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.elements.spring.SpringLaw;
import foldwright.gantry.model.RailLoad;
import foldwright.lift.ArmLoad;
import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.lift.PartShares;
import foldwright.lift.PartShares.Split;
import foldwright.lift.PinLoad;
import foldwright.lift.ScrewLoad;
import foldwright.lift.SpringLoad;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Block;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.Guide;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Shown;
import foldwright.study.SourceWords;
import foldwright.study.Verdict;
import foldwright.viewer.scene.Part;
import foldwright.viewer.session.PartReading.Fact;
import foldwright.viewer.session.PartReading.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Reads what a part carries: from the point of the force curve nearest to the height, so that
 * values and shares belong together, and from the gantry's instant.
 */
final class PartReader {
    /** A whole and a value that differ by more do not belong together [1]. */
    private static final double SAME = 1e-3;

    private final Machine machine;
    private final Optional<CurvePoint> point;
    private final Optional<GantryLoads> gantry;
    private final List<Fact> facts = new ArrayList<>();
    private final List<Share> shares = new ArrayList<>();
    private final PartSplits splits;
    private String split = "";
    private String note = "";

    PartReader(Machine machine, Results results, PartSplits splits, double height) {
        this.machine = machine;
        this.splits = splits;
        gantry = results.gantry();
        point = results.curve().flatMap(c -> nearest(c, height));
    }

    private static Optional<CurvePoint> nearest(ForceCurve curve, double height) {
        return curve.raising().stream()
                .min(Comparator.comparingDouble(p -> Math.abs(p.height() - height)));
    }

    PartReading read(Part part) {
        switch (part.kind()) {
            case ARM -> point.ifPresent(p -> arm(part.name(), p));
            case PIN -> point.ifPresent(p -> pin(part.name(), p));
            case SCREW, NUT -> point.ifPresent(this::screw);
            case SLIDER -> point.ifPresent(this::foot);
            case SPRING -> point.ifPresent(p -> spring(part.name(), p));
            case MOTOR -> motor(part.name());
            case BELT -> belt(part.name());
            case BLOCK, RAIL -> rail(part.name());
            case DECK -> weight("weight on the arms", machine.raisedMass());
            default -> {}
        }
        if (facts.isEmpty()) {
            facts.add(new Fact(part.kind().word(), "no load is computed for it"));
        }
        return new PartReading(part.name(), facts, split, shares, note);
    }

    private void fact(String name, double si, Shown unit) {
        facts.add(new Fact(name, Numerals.with(si, unit)));
    }

    private void weight(String name, double mass) {
        fact(name, mass * 9.80665, Shown.NEWTON);
    }

    /** A value against its limit, with the margin; the rule is 1.5 as for all. */
    private void limited(String name, double si, double limit, Shown unit) {
        if (Double.isNaN(limit) || Double.isInfinite(limit) || Double.isNaN(si)) {
            fact(name, si, unit);
            facts.add(new Fact("limit of it", "not given"));
            return;
        }
        double margin = Outcome.marginOf(Math.abs(si), limit);
        Verdict verdict =
                margin < 1 ? Verdict.FAILS : margin < Verdict.RULE ? Verdict.TIGHT : Verdict.HOLDS;
        facts.add(
                new Fact(
                        name,
                        Numerals.with(si, unit)
                                + " of "
                                + Numerals.with(limit, unit)
                                + ", margin "
                                + Numerals.margin(margin),
                        Optional.of(verdict)));
    }

    private void arm(String name, CurvePoint p) {
        for (ArmLoad a : p.parts().arms()) {
            if (a.arm().equals(name)) {
                fact("bending at the centre pin", a.bending(), Shown.NEWTON_METRE);
                facts.add(
                        new Fact(
                                a.axial() >= 0 ? "pressed along with" : "pulled along with",
                                Numerals.with(Math.abs(a.axial()), Shown.NEWTON)));
                OptionalDouble strength = machine.lift().arm().material().strength();
                limited("stress", a.stress(), strength.orElse(Double.NaN), Shown.MEGAPASCAL);
                split = "bending by cause";
                ownShares(p, a.bending(), s -> s.arm(name), Shown.NEWTON_METRE);
            }
        }
    }

    private void pin(String name, CurvePoint p) {
        for (PinLoad l : p.parts().pins()) {
            if (l.pin().equals(name)) {
                fact("force across it", l.force(), Shown.NEWTON);
                double limit = l.use() > 0 ? l.pressure() / l.use() : Double.NaN;
                limited("pressure in its bearing", l.pressure(), limit, Shown.MEGAPASCAL);
                split = "force by cause";
                ownShares(p, l.force(), s -> s.pin(name), Shown.NEWTON);
            }
        }
    }

    private void screw(CurvePoint p) {
        ScrewLoad s = p.screw();
        String sense = s.force() >= 0 ? ", lifts" : ", holds down";
        facts.add(
                new Fact(
                        "force on the nut",
                        Numerals.with(Math.abs(s.force()), Shown.NEWTON) + sense));
        fact("torque to turn it", s.torque(), Shown.NEWTON_METRE);
        if (s.bucklingUse() > 0) {
            limited("pressed, buckles at", Math.abs(s.force()), s.bucklingLoad(), Shown.NEWTON);
        } else {
            facts.add(new Fact("only pulled", "it cannot buckle"));
        }
        OptionalDouble allowed = machine.drive().screw().nut().allowedPressure();
        limited(
                "pressure in the nut",
                s.nutPressure(),
                allowed.orElse(Double.NaN),
                Shown.MEGAPASCAL);
        footShares(p);
    }

    private void foot(CurvePoint p) {
        fact("push on the sliding feet together", p.footForce(), Shown.NEWTON);
        footShares(p);
    }

    private void spring(String name, CurvePoint p) {
        for (SpringLoad s : p.parts().springs()) {
            if (!s.spring().equals(name)) {
                continue;
            }
            boolean along = s.measure() == SpringLaw.Measure.LENGTH;
            Shown unit = along ? Shown.NEWTON : Shown.NEWTON_METRE;
            Shown extent = along ? Shown.MILLIMETRE : Shown.DEGREE;
            if (s.letGo() && s.force() == 0) {
                facts.add(new Fact("pushes with", "nothing: it has let go"));
            } else {
                facts.add(
                        new Fact(
                                s.force() >= 0 ? "pushes with" : "pulls with",
                                Numerals.with(Math.abs(s.force()), unit)));
            }
            facts.add(
                    new Fact(
                            along ? "length between its ends" : "angle of its legs",
                            Numerals.with(s.extent(), extent)
                                    + ", free at "
                                    + Numerals.with(s.free(), extent)));
            note = "its length alone makes its force: no shares";
            if (!Double.isNaN(s.stress())) {
                limited("stress of its wire", s.stress(), s.allowedStress(), Shown.MEGAPASCAL);
            }
        }
    }

    private void motor(String name) {
        Optional<Double> torque = gantry.flatMap(g -> g.torque(name));
        if (torque.isPresent()) {
            double holding =
                    machine.gantry().orElseThrow().motors().stream()
                            .filter(m -> m.name().equals(name))
                            .mapToDouble(m -> m.stepper().holdingTorque())
                            .findFirst()
                            .orElse(Double.NaN);
            limited("torque", torque.get(), holding, Shown.NEWTON_METRE);
            facts.add(new Fact("when", gantry.get().words()));
            return;
        }
        point.ifPresent(
                p -> {
                    limited(
                            "torque",
                            p.motor().needed(),
                            p.motor().available(),
                            Shown.NEWTON_METRE);
                    fact("speed", p.motor().speed(), Shown.REVOLUTION_PER_SECOND);
                    motorShares(p);
                });
    }

    private void belt(String name) {
        Optional<GantryLoads.Tension> tension = gantry.flatMap(g -> g.tension(name));
        if (tension.isPresent()) {
            GantryLoads.Tension t = tension.get();
            fact("tension", t.total(), Shown.NEWTON);
            if (!Double.isNaN(t.frequency())) {
                fact("sounds when plucked at", t.frequency(), Shown.HERTZ);
            }
            facts.add(new Fact("when", gantry.get().words()));
            split = "tension by cause";
            double most = Math.max(Math.abs(t.rest()), Math.abs(t.acceleration()));
            share("pretension", t.rest(), t.total(), most);
            share("acceleration", t.acceleration(), t.total(), most);
            share("rail friction, would add", t.friction(), Double.NaN, most);
            return;
        }
        point.ifPresent(
                p -> {
                    new CurveFields(machine, List.of(p, p), java.util.Map.of())
                            .field(Overlay.DRIVE_BELT)
                            .ifPresent(
                                    f ->
                                            fact(
                                                    "pull over the slack strand",
                                                    f.at(name, p.height()),
                                                    Shown.NEWTON));
                    motorShares(p);
                });
    }

    /** A piece of a belt's tension; one that is no part of the whole has no percentage. */
    private void share(String name, double si, double whole, double most) {
        shares.add(
                new Share(
                        name,
                        Numerals.with(si, Shown.NEWTON),
                        Double.isNaN(whole) ? "" : Numerals.percent(si / whole),
                        si / most,
                        Optional.empty()));
    }

    private void rail(String name) {
        Optional<RailLoad> load = gantry.flatMap(g -> g.rail(name));
        if (load.isEmpty()) {
            return;
        }
        RailLoad l = load.get();
        Gantry g = machine.gantry().orElseThrow();
        Guide guide = g.legs().guide();
        Block block = guide.block();
        fact("yaw moment on its blocks", l.yaw(), Shown.NEWTON_METRE);
        fact("side force on its blocks", l.side(), Shown.NEWTON);
        if (guide.blocks() == 1) {
            limited(
                    "yaw moment of the block",
                    Math.abs(l.yaw()),
                    block.staticMoment().orElse(Double.NaN),
                    Shown.NEWTON_METRE);
        } else {
            limited(
                    "side force of one block",
                    GantryLoads.force(guide, l),
                    block.staticRating().orElse(Double.NaN),
                    Shown.NEWTON);
        }
        facts.add(new Fact("when", gantry.get().words()));
    }

    /** Shares of this very part, or that they are being computed. */
    private void ownShares(
            CurvePoint p, double value, Function<PartShares, Optional<Split>> own, Shown unit) {
        PartSplits.Answer answer = splits.at(p.height());
        Optional<Split> found = answer.shares().flatMap(own);
        List<Share> rows = found.map(s -> ShareRows.of(s, unit)).orElse(List.of());
        boolean fits =
                found.filter(s -> Math.abs(s.total() - value) <= SAME * value + 1e-9).isPresent();
        if (answer.state() == PartSplits.State.KNOWN && fits) {
            shares.addAll(rows);
            split += ", " + Numerals.with(value, unit);
        } else if (answer.state() == PartSplits.State.NONE) {
            split = "";
            return;
        } else {
            shares.addAll(ShareRows.blank(rows));
            split += ": being computed";
        }
        note =
                shares.stream().anyMatch(s -> s.cause().equals(Optional.of(Cause.WIND_UP)))
                        ? "screws out of step: joints give as stated"
                        : "bars to the right load it, to the left relieve it";
    }

    private void footShares(CurvePoint p) {
        split = "push at the feet by cause, " + Numerals.with(p.footForce(), Shown.NEWTON);
        shares.addAll(ShareRows.of(p.footShares(), Shown.NEWTON));
    }

    private void motorShares(CurvePoint p) {
        String source = SourceWords.of(machine).noun();
        split =
                source
                        + " torque by cause, "
                        + Numerals.with(p.motor().needed(), Shown.NEWTON_METRE);
        shares.addAll(ShareRows.of(p.motorShares(), Shown.NEWTON_METRE));
    }
}
