// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.HoldResult.Point;
import foldwright.lift.HoldResult.RunDown;
import foldwright.lift.HoldResult.Verdict;
import foldwright.machine.Machine;
import foldwright.machine.drive.Nut;
import foldwright.machine.drive.StepperDrive;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.MovingBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleConsumer;

/**
 * What the lift does with the power off, at every height and for the whole range of thread
 * friction.
 *
 * <p>At each height the loads on the nuts are those of the model as it is about to sink, and as it
 * is about to spring up, pins and guides helping to hold. Through thread, collar and belt they turn
 * the motor, which holds by its detent torque alone. The friction that just holds is found by
 * halving. Where the lowest friction does not hold, the model is let go and runs down in time.
 *
 * <p>Friction at rest is taken as friction in motion; shaking lowers it, so ask for a margin.
 */
public final class HoldStudy {
    private static final int HEIGHTS = 41;
    private static final double CREEP = 1e-4;
    private static final int HALVINGS = 40;
    private static final double ROUNDING = 1e-9;
    private static final double HOUR = 3600;
    private static final double HOUR_STEP = 5e-2;

    private final Machine machine;
    private final LiftModel model;
    private final MovingLift lift;
    private final Marker back;
    private final Marker front;
    private final double detent;
    private final double low;
    private final double high;

    private HoldStudy(Machine machine) {
        this.machine = machine;
        model = new LiftModel(machine, LiftSolver.giveOf(machine));
        lift = new MovingLift(model);
        double half = machine.lift().width() / 2;
        back = model.linkage().deck().marker(new Vec3(0, half, 0));
        front = model.linkage().deck().marker(new Vec3(0, -half, 0));
        detent = machine.drive().source() instanceof StepperDrive s ? s.motor().detentTorque() : 0;
        Nut nut = machine.drive().screw().nut();
        low = nut.leastFriction();
        high = nut.frictionHigh().orElse(nut.friction());
    }

    /** Studies a machine over its whole travel. */
    public static HoldResult of(Machine machine) {
        return new HoldStudy(machine).study();
    }

    private HoldResult study() {
        TreeSet<Double> grid = new TreeSet<>();
        for (int i = 0; i < HEIGHTS; i++) {
            double share = i / (HEIGHTS - 1.0);
            grid.add(model.lowest() + share * (model.highest() - model.lowest()));
        }
        new SpringEvents(model).find().forEach(e -> grid.add(e.height()));
        double[] heights = grid.stream().mapToDouble(h -> Math.min(h, model.highest())).toArray();
        MovingBalance[] sinking = sweep(heights, -CREEP);
        MovingBalance[] rising = sweep(heights, CREEP);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            points.add(point(heights[i], sinking[i], rising[i]));
        }
        HoldResult plain =
                new HoldResult(machine.name(), points, Optional.empty(), Optional.empty(), "");
        double needed = plain.worst().map(Point::frictionNeeded).orElse(0.0);
        Optional<Double> flip = needed > 0 && needed < 1 ? Optional.of(needed) : Optional.empty();
        Optional<RunDown> run =
                startOfRun(points).map(h -> new RunDownStudy(machine, low, detent).from(h));
        return new HoldResult(machine.name(), points, flip, run, sentence(plain, needed));
    }

    /** The highest height from which it sinks with the lowest friction. */
    private Optional<Double> startOfRun(List<Point> points) {
        return points.stream()
                .filter(p -> p.frictionNeeded() > low && p.nutForce() > 0)
                .map(Point::height)
                .max(Double::compare);
    }

    /** Loads at all heights, one after the other, while the deck moves at a creeping speed. */
    private MovingBalance[] sweep(double[] heights, double speed) {
        MovingBalance[] all = new MovingBalance[heights.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = lift.following(model.scissor().atHeight(heights[i]), speed);
        }
        return all;
    }

    private Point point(double height, MovingBalance sinking, MovingBalance rising) {
        if (failed(sinking) || failed(rising)) {
            double unknown = Double.NaN;
            return new Point(
                    height, Verdict.NOT_SOLVED, unknown, unknown, detent, unknown, unknown);
        }
        double[] down = forces(sinking, -1);
        double[] up = forces(rising, 1);
        double needed = Math.max(needed(down), needed(up));
        double nut = atRest(sinking, rising, down, up);
        return new Point(
                height,
                verdict(needed, down, up),
                nut,
                Math.max(drive(down, low), drive(up, low)),
                detent,
                needed,
                droop(sinking));
    }

    private static boolean failed(MovingBalance b) {
        return b.outcome() == MovingBalance.Outcome.FAILED;
    }

    /**
     * Forces of the screws on their nuts along the motion; nothing where friction locks the lift.
     */
    private double[] forces(MovingBalance b, int sense) {
        double[] f = new double[model.screws().size()];
        if (b.outcome() == MovingBalance.Outcome.BALANCED) {
            Equilibrium e = b.balance();
            for (int i = 0; i < f.length; i++) {
                ScrewPart part = model.screws().get(i);
                f[i] = sense * part.raisingForce(e.load(part.row()));
            }
        }
        return f;
    }

    /**
     * Force on the most loaded nut at rest: midway between sinking and rising, raising sense [N].
     */
    private static double atRest(
            MovingBalance sinking, MovingBalance rising, double[] down, double[] up) {
        boolean both = sinking.outcome() == rising.outcome();
        double[] rest = new double[up.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = both ? 0.5 * (up[i] - down[i]) : up[i] - down[i];
        }
        return largest(rest);
    }

    private static double largest(double[] f) {
        double most = 0;
        for (double x : f) {
            most = Math.abs(x) > Math.abs(most) ? x : most;
        }
        return most;
    }

    /**
     * What the load puts on the most loaded motor shaft, negative where it must be driven [N·m].
     */
    private double drive(double[] alongMotion, double friction) {
        DriveTrain train = new DriveTrain(machine.drive(), friction);
        double[] sum = new double[train.motors()];
        for (int i = 0; i < alongMotion.length; i++) {
            sum[train.motorOf(i)] += train.turn(alongMotion[i]).total();
        }
        double most = Double.NEGATIVE_INFINITY;
        for (double torque : sum) {
            most = Math.max(most, -train.motorTorque(torque));
        }
        return most;
    }

    /** Thread friction that just holds, 0 where none is needed, 1 where even 1 does not hold. */
    private double needed(double[] alongMotion) {
        if (drive(alongMotion, 0) <= detent) {
            return 0;
        }
        double runs = 0;
        double holds = 1;
        if (drive(alongMotion, holds) > detent) {
            return 1;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (runs + holds);
            if (drive(alongMotion, middle) > detent) {
                runs = middle;
            } else {
                holds = middle;
            }
        }
        return holds;
    }

    private Verdict verdict(double needed, double[] down, double[] up) {
        if (needed <= low) {
            return Verdict.HOLDS;
        }
        if (needed <= high) {
            return Verdict.MAY_HOLD;
        }
        return needed(up) > needed(down) ? Verdict.SPRINGS_UP : Verdict.RUNS_DOWN;
    }

    private double droop(MovingBalance b) {
        if (b.outcome() != MovingBalance.Outcome.BALANCED) {
            return 0;
        }
        State s = b.balance().state();
        double d = s.point(back).z() - s.point(front).z();
        // A symmetric lift leaves rounding only.
        return Math.abs(d) < ROUNDING ? 0 : d;
    }

    private String sentence(HoldResult result, double needed) {
        if (result.worst().isEmpty()) {
            return "No balance of loads was found at any height: nothing is known of how it stands"
                    + " unpowered.";
        }
        Point worst = result.worst().get();
        String range =
                low == high
                        ? String.format(Locale.ROOT, "thread friction %.3g", low)
                        : String.format(
                                Locale.ROOT, "thread friction from %.3g to %.3g", low, high);
        String flip =
                needed == 0
                        ? "it would hold without any thread friction"
                        : String.format(
                                Locale.ROOT,
                                "the verdict flips at %.3g, at a pivot height of %.0f mm",
                                needed,
                                worst.height() * 1e3);
        String what =
                switch (worst.verdict()) {
                    case HOLDS -> "it stays where it is";
                    case MAY_HOLD -> "it may run down when freshly oiled";
                    case RUNS_DOWN -> "it runs down";
                    case SPRINGS_UP -> "its springs push it up";
                    case NOT_SOLVED -> throw new IllegalStateException("the worst is solved");
                };
        return String.format(
                Locale.ROOT,
                "Unpowered, with %s, %s; %s (the thread alone: %.3g; %s help).%s",
                range,
                what,
                flip,
                threadAlone(),
                helpers(),
                unsolved(result));
    }

    private String helpers() {
        return detent == 0
                ? "pins and collar"
                : String.format(Locale.ROOT, "pins, collar and a detent of %.3g N\u00b7m", detent);
    }

    private static String unsolved(HoldResult result) {
        List<Point> open = result.unsolved();
        return open.isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        " No balance of loads was found at %d of %d heights, first at %.1f mm:"
                                + " nothing is known of them.",
                        open.size(),
                        result.points().size(),
                        open.get(0).height() * 1e3);
    }

    /** Friction at which the bare thread holds: tan(lead angle) cos(flank angle). */
    private double threadAlone() {
        var t = machine.drive().screw().thread();
        return t.lead() / (Math.PI * t.pitchDiameter()) * Math.cos(t.flankAngle());
    }

    /**
     * An hour of hold in time at the height where holding needs most friction, with the least of
     * its thread; empty where it does not stay there.
     *
     * @param progress told the time reached [s]
     */
    public static Optional<HourHeld> hour(
            Machine machine, HoldResult result, DoubleConsumer progress) {
        Optional<Point> worst = result.worst().filter(p -> p.verdict() == Verdict.HOLDS);
        return worst.map(
                p -> {
                    double friction = machine.drive().screw().nut().leastFriction();
                    return RunDownStudy.stand(
                            machine, friction, p.height(), HOUR, HOUR_STEP, progress);
                });
    }

    /**
     * How far the deck moves while the drive holds it unpowered, after a second in which elastic
     * parts take up the load; not a number where a step failed [m].
     *
     * @param threadFriction in the threads [1]
     * @param height pivot height it stands at [m]
     * @param seconds how long [s]
     * @param step time step [s]
     */
    public static double creep(
            Machine machine, double threadFriction, double height, double seconds, double step) {
        return RunDownStudy.stand(machine, threadFriction, height, seconds, step, t -> {}).drift();
    }
}
