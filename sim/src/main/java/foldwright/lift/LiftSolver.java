// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.machine.drive.ScrewLine;
import foldwright.mechanics.solve.MovingBalance;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What the drive of a lift needs and what its parts carry, at any height and over the whole travel.
 *
 * <p>Slow motion in balance of all loads (inertia of the steady motion included), in 3D with both
 * sides, friction at every pin and guide following its own load. Pins and guides are ideal here:
 * the force over height hardly depends on how much they yield, and a soft lift driven near flat may
 * have no steady motion at all. Only when a screw is out of phase with the others does the stated
 * stiffness enter, since it alone decides how much they fight.
 *
 * <p>Belongs to one thread and holds no state others could see: build one a thread. Building takes
 * a few milliseconds, a curve with 200 heights both ways some tens.
 */
public final class LiftSolver {
    /** Heights of a curve unless asked otherwise. */
    public static final int HEIGHTS = 200;

    private final Machine machine;
    private final LiftModel model;
    private final MovingLift lift;
    private final DriveTrain train;
    private final CurveRun run;

    /** A solver for a machine as described. */
    public LiftSolver(Machine machine) {
        this.machine = machine;
        this.model = new LiftModel(machine, giveOf(machine));
        this.lift = new MovingLift(model);
        this.train = new DriveTrain(machine.drive());
        this.run =
                new CurveRun(
                        lift,
                        new PointMaker(model, train),
                        new RiseLaw(machine.drive().rise(), train));
    }

    /** How much joints yield: only screws out of step make it matter. */
    static Give giveOf(Machine machine) {
        return inStep(machine) ? Give.IDEAL : Give.STATED;
    }

    private static boolean inStep(Machine machine) {
        double first = machine.drive().lines().get(0).phaseError();
        for (ScrewLine line : machine.drive().lines()) {
            if (line.phaseError() != first) {
                return false;
            }
        }
        return true;
    }

    /** The machine it solves. */
    public Machine machine() {
        return machine;
    }

    /** Lowest pivot height of the travel [m]. */
    public double lowest() {
        return model.lowest();
    }

    /** Highest pivot height of the travel [m]. */
    public double highest() {
        return model.highest();
    }

    /** The force curve at {@link #HEIGHTS} heights both ways. */
    public ForceCurve curve() {
        return curve(HEIGHTS);
    }

    /**
     * The force curve.
     *
     * @param heights how many even heights from flat to open, at least 2; some are added
     */
    public ForceCurve curve(int heights) {
        List<SpringEvents.Event> events = new SpringEvents(model).find();
        Optional<Finding> lock =
                LockSearch.worthLooking(machine)
                        ? new LockSearch(machine).find()
                        : Optional.empty();
        double[] grid = above(lock, grid(heights, events));
        CurveRun.Track up = run.run(grid, Direction.RAISING);
        CurveRun.Track down = run.run(grid, Direction.LOWERING);
        CurveFindings findings = new CurveFindings(model);
        lock.ifPresent(findings::add);
        findings.stalls(up.points(), Direction.RAISING);
        findings.stalls(down.points(), Direction.LOWERING);
        findings.nutLoad(up.points(), Direction.RAISING);
        findings.nutLoad(down.points(), Direction.LOWERING);
        findings.springs(events);
        findings.screws(up.points());
        findings.gaps(up.gaps(), Direction.RAISING);
        findings.gaps(down.gaps(), Direction.LOWERING);
        return new ForceCurve(machine.name(), up.points(), down.points(), findings.all());
    }

    /** Heights at which a lock found leaves the lift free to move; the others have no point. */
    private static double[] above(Optional<Finding> lock, double[] grid) {
        double bottom = lock.isPresent() ? lock.get().to() : 0;
        int locked = 0;
        while (locked < grid.length && !(grid[locked] > bottom)) {
            locked++;
        }
        return Arrays.copyOfRange(grid, locked, grid.length);
    }

    private double[] grid(int heights, List<SpringEvents.Event> events) {
        if (heights < 2) {
            throw new IllegalArgumentException("a curve needs 2 heights or more, not " + heights);
        }
        TreeSet<Double> grid = new TreeSet<>();
        for (int i = 0; i < heights; i++) {
            grid.add(
                    i == heights - 1
                            ? highest()
                            : lowest() + (highest() - lowest()) * i / (heights - 1));
        }
        for (SpringEvents.Event e : events) {
            Double near = grid.floor(e.height() + 1e-9);
            if (near == null || near < e.height() - 1e-9) {
                grid.add(e.height());
            }
        }
        double[] out = new double[grid.size()];
        int n = 0;
        for (double h : grid) {
            out[n++] = h;
        }
        return out;
    }

    /** The point of the force curve at a height [m]; empty if the lift is locked there. */
    public Optional<CurvePoint> point(double height, Direction way) {
        return run.at(height, way);
    }

    /**
     * What pins and arms carry at a height, by cause; empty if the lift is locked there.
     *
     * @param height pivot height [m]
     */
    public Optional<PartShares> shares(double height, Direction way) {
        MovingBalance b = run.passing(height, way);
        return b.outcome() == MovingBalance.Outcome.BALANCED
                ? Optional.of(ShareSolver.of(model, b.balance(), height, way))
                : Optional.empty();
    }

    /**
     * Where everything is and what it carries at a height.
     *
     * @param height pivot height [m]; moved into the travel if it lies outside
     */
    public LiftPose pose(double height, Direction way) {
        double within = Math.max(lowest(), Math.min(highest(), height));
        MovingBalance b = run.passing(within, way);
        return new PoseReader(model).read(b, within, way, run.at(within, way));
    }
}
