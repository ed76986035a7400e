// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.PinPart;
import foldwright.lift.Linkage.SliderPart;
import foldwright.machine.Machine;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.SliderEnd;
import foldwright.machine.linkage.SpecialPin;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Rows;
import foldwright.mechanics.solve.MovingBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the height below which friction locks the lift however hard it is driven, and names what
 * locks.
 *
 * <p>The solver tells how strongly friction feeds on itself at a height (1 = locked); for pins
 * alone that amplification is 4 μ r/h. The friction rows that carry the loop name the part.
 *
 * <p>Whether friction locks does not depend on the load, so the search runs without springs and
 * with a tenth of the weights: near a lock the true loads would squeeze even stiff joints so far
 * that the lift folds through first.
 */
final class LockSearch {
    private static final int ROUNDS = 12;

    /**
     * Amplification at which it is read [1]: some eight lock heights up, where loads hardly squeeze
     * the joints.
     */
    private static final double AIM = 0.12;

    /** How much higher the second height lies. */
    private static final double APART = 1.5;

    /**
     * Free fall ten times weaker [m/s²]: see the class comment; lighter loads drown in rounding.
     */
    private static final double LIGHT = 1;

    /** Heights of the lock at which the loop is strong enough to name what carries it. */
    private static final double NAMED = 2;

    /** Hand estimate of the amplification at flat below which no lock is looked for. */
    private static final double FAR = 0.05;

    private final MovingLift lift;

    /** Looks at a machine. */
    LockSearch(Machine machine) {
        lift = new MovingLift(new LiftModel(without(machine), Give.IDEAL, LIGHT));
    }

    /** Whether a lock can lie anywhere near the travel, by hand at flat. */
    static boolean worthLooking(Machine machine) {
        Lift l = machine.lift();
        return pins(l) + guides(l) > FAR;
    }

    /** Amplification by the worst pin at flat, by hand [1]: 4 μ r/h. */
    private static double pins(Lift l) {
        double h = new Scissor(l).at(l.travel().fold().low()).lowestStageHeight();
        double pins = arm(l.pins().usual());
        for (SpecialPin special : l.pins().special()) {
            pins = Math.max(pins, arm(special.pin()));
        }
        return 4 * pins / h;
    }

    /** Amplification by the guides, by hand [1]: 2 μ e/l, push offset e, guided length l. */
    private static double guides(Lift l) {
        SliderEnd foot = l.sliders().base();
        return 2 * foot.friction() * Math.abs(foot.pushOffset()) / foot.guideLength();
    }

    private static double arm(Pin pin) {
        return pin.bearing().friction() * pin.radius();
    }

    private static Machine without(Machine m) {
        return new Machine(
                m.name(),
                m.purpose(),
                m.notes(),
                m.assumed(),
                m.base(),
                m.deck(),
                m.lift(),
                m.drive(),
                List.of(),
                m.stops(),
                m.latch(),
                m.gantry(),
                m.tool(),
                m.box(),
                m.limits(),
                m.cables(),
                m.measured());
    }

    /**
     * The height below which the lift locks; empty if it lies below the heights the model knows.
     *
     * <p>Along the travel the amplification is a + b/H: a from guides, b from pins. Both are taken
     * from a height where it is about an eighth, or as near to that as the travel allows, and one
     * half as high again; the lock is at b/(1 - a). Read close above the lock, b would come out too
     * large (by 8 % at one half), since even stiff joints squeeze there.
     */
    Optional<Finding> find() {
        LiftModel model = lift.model();
        double most = model.highest() / APART;
        double height = Math.min(most, start());
        MovingBalance near = at(height);
        for (int i = 0; i < ROUNDS && !aimed(near, height >= most); i++) {
            if (!(near.amplification() > 0)) {
                return Optional.empty();
            }
            double factor = Math.min(4, Math.max(0.25, near.amplification() / AIM));
            height = Math.min(most, factor * height);
            if (height < model.bottom()) {
                return Optional.empty();
            }
            near = at(height);
        }
        Optional<Finding> always =
                near.outcome() == MovingBalance.Outcome.LOCKED
                        ? always(at(model.highest()))
                        : Optional.empty();
        return always.isPresent() ? always : between(near, height);
    }

    /** Whether the amplification is read at a good height, or at the highest there is. */
    private static boolean aimed(MovingBalance near, boolean highest) {
        double amplification = near.amplification();
        return Math.abs(amplification - AIM) < 0.2 * AIM || highest && amplification > AIM;
    }

    /** Where by hand the amplification is what the search aims at; flat if that tells nothing. */
    private double start() {
        LiftModel model = lift.model();
        Lift l = model.machine().lift();
        double byHand = model.lowest() * pins(l) / (AIM - guides(l));
        return byHand > model.bottom() && byHand < model.highest() ? byHand : model.lowest();
    }

    private MovingBalance at(double height) {
        return lift.passing(lift.model().scissor().atHeight(height), 1e-3);
    }

    /** Locked even fully open: a guide whose friction cone is closed. */
    private Optional<Finding> always(MovingBalance open) {
        return open.outcome() == MovingBalance.Outcome.LOCKED
                ? Optional.of(finding(open, lift.model().highest()))
                : Optional.empty();
    }

    private Optional<Finding> between(MovingBalance near, double height) {
        LiftModel model = lift.model();
        double above = Math.min(APART * height, model.highest());
        MovingBalance far = at(above);
        if (!(far.amplification() > 0)) {
            return Optional.empty();
        }
        double slope = (near.amplification() - far.amplification()) / (1 / height - 1 / above);
        double rest = near.amplification() - slope / height;
        double lock = slope / (1 - rest);
        return lock > 0 && rest < 1
                ? Optional.of(finding(at(Math.min(NAMED * lock, model.highest())), lock))
                : Optional.empty();
    }

    private Finding finding(MovingBalance at, double height) {
        LiftModel model = lift.model();
        List<Friction> rows = frictions(model);
        double pins = 0;
        double guides = 0;
        double[] stages = new double[model.scissor().stages() + 1];
        for (PinPart p : model.linkage().pins()) {
            double share = power(at, rows, p.friction());
            pins += share;
            addToStages(p, share, stages);
        }
        String guide = "";
        double most = 0;
        for (SliderPart s : model.linkage().sliders()) {
            for (Friction f : s.frictions()) {
                double share = power(at, rows, f);
                guides += share;
                guide = share > most ? s.name() : guide;
                most = Math.max(most, share);
            }
        }
        return pins >= guides ? pinFinding(stages, height) : guideFinding(guide, at, height);
    }

    /** Share of a row in the loop, as power, so that forces and torques compare. */
    private static double power(MovingBalance at, List<Friction> rows, Friction row) {
        double slip = Math.abs(row.coordinate().rate(at.balance().state()));
        return at.lockingShare(rows.indexOf(row)) * slip;
    }

    private static void addToStages(PinPart p, double share, double[] stages) {
        if (p.place() == PinPlace.JUNCTION) {
            stages[p.row()] += share / 2;
            stages[p.row() + 1] += share / 2;
        } else if (p.place() == PinPlace.CENTRE) {
            stages[p.row()] += share;
        } else {
            stages[p.row() == 0 ? 1 : p.row()] += share;
        }
    }

    private Finding pinFinding(double[] shares, double height) {
        int stage = 1;
        for (int k = 2; k < shares.length; k++) {
            stage = shares[k] > 1.5 * shares[stage] ? k : stage;
        }
        Scissor.Shape shape = lift.model().scissor().atHeight(height);
        double own = shape.stageHeight(stage);
        String text =
                "stage "
                        + stage
                        + " locks below h = "
                        + CurveFindings.millimetres(own)
                        + " however hard it is driven (pivot height "
                        + CurveFindings.millimetres(height)
                        + "): the pins jam";
        return new Finding(Finding.Kind.PINS_LOCK, "stage " + stage, 0, height, own, text);
    }

    private Finding guideFinding(String guide, MovingBalance at, double height) {
        boolean always = height >= lift.model().highest();
        String where =
                always
                        ? String.format(
                                Locale.ROOT,
                                "at every height however hard it is driven; with %.0f %% of the"
                                        + " friction it would just move",
                                100 / at.amplification())
                        : "below a pivot height of "
                                + CurveFindings.millimetres(height)
                                + " however hard it is driven";
        String text = "the " + guide + " jams in its guide " + where;
        return new Finding(Finding.Kind.GUIDE_JAMS, guide, 0, height, 1 / at.amplification(), text);
    }

    private static List<Friction> frictions(LiftModel model) {
        List<Friction> list = new ArrayList<>();
        for (Rows r : model.mechanism().rows()) {
            if (r instanceof Friction f) {
                list.add(f);
            }
        }
        return list;
    }
}
