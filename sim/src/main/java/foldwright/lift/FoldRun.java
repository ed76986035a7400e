// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.FoldResult.Convergence;
import foldwright.lift.FoldResult.EventKind;
import foldwright.lift.FoldResult.Ledger;
import foldwright.lift.FoldResult.Outcome;
import foldwright.machine.Machine;
import foldwright.machine.drive.StepperDrive;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.solve.EnergyLedger;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Statics;
import foldwright.mechanics.solve.Stepper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * Unfolding or folding in time with the motor's real commands: the field of the motor turns as the
 * asked rise needs, with its ramps; the rotor follows by its load angle or loses steps; springs let
 * go, stops are met.
 *
 * <p>Starts from the equilibrium in which the drive holds the deck. A motor that stays out of step
 * ends the run: that is a result. Pins and guides are ideal; see {@link DrivenLift}.
 */
public final class FoldRun {
    /** Step unless asked otherwise [s]; the motor's own swing is faster and is damped out. */
    public static final double STEP = 1e-2;

    private static final double AFTER = 0.25;

    /** Steps between two words on how far it is. */
    private static final int LOOK = 64;

    /** Distance from flat that counts as folded [m]. */
    private static final double FOLDED = 1e-6;

    /** Poles behind at which a motor counts as stalled. */
    private static final int LOST = 2;

    private final Machine machine;
    private final Direction direction;
    private final DrivenLift lift;
    private final RiseCommand command;
    private final List<StepperLaw> motors = new ArrayList<>();

    /** What turns a crank; null where motors turn. */
    private Driver hand;

    private final double from;
    private final double to;

    /** Whether the run begins with the latch closed. */
    private final boolean latched;

    private FoldRun(Machine machine, Direction direction, double from, double to) {
        this.machine = machine;
        this.direction = direction;
        this.from = from;
        this.to = to;
        lift = new DrivenLift(machine, Give.IDEAL, machine.drive().screw().nut().friction(), from);
        RiseLaw law = new RiseLaw(machine.drive().rise(), lift.train());
        latched = lift.latch().isPresent() && isFolded(from);
        command = new RiseCommand(law, lift.shape().path(0), from, to);
        for (DrivenLift.Rotor rotor : lift.rotors()) {
            power(rotor);
        }
    }

    /** Over the whole travel of the machine: raising from flat, lowering from fully open. */
    public static FoldResult run(Machine machine, Direction direction, double step) {
        return run(machine, direction, step, share -> {});
    }

    private static FoldResult run(
            Machine machine, Direction direction, double step, DoubleConsumer done) {
        LiftSolver ends = new LiftSolver(machine);
        boolean up = direction == Direction.RAISING;
        double from = up ? ends.lowest() : ends.highest();
        double to = up ? ends.highest() : ends.lowest();
        return new FoldRun(machine, direction, from, to).go(step, done);
    }

    /**
     * Between two pivot heights [m].
     *
     * @param step time step [s]
     */
    public static FoldResult run(
            Machine machine, Direction direction, double from, double to, double step) {
        return new FoldRun(machine, direction, from, to).go(step, share -> {});
    }

    /**
     * The same run twice, the second time with half the step; the result is that of the second.
     *
     * @param done told now and then which share of the work is done, 0 to 1
     */
    public static FoldResult halved(
            Machine machine, Direction direction, double step, DoubleConsumer done) {
        FoldResult coarse = run(machine, direction, step, share -> done.accept(share / 3));
        FoldResult fine =
                run(machine, direction, 0.5 * step, share -> done.accept((1 + 2 * share) / 3));
        double margin = fine.convergence().worstMargin();
        boolean both =
                coarse.outcome() != Outcome.NOT_SOLVED && fine.outcome() != Outcome.NOT_SOLVED;
        double change =
                both ? Math.abs(coarse.convergence().worstMargin() / margin - 1) : Double.NaN;
        return fine.withHalving(coarse.outcome(), change);
    }

    private boolean isFolded(double height) {
        return Math.abs(height - lift.shape().lowest()) < FOLDED;
    }

    private void power(DrivenLift.Rotor rotor) {
        RotorCommand turns = new RotorCommand(lift, rotor, command);
        if (machine.drive().source() instanceof StepperDrive stepper) {
            int teeth = Math.max(1, stepper.motor().stepsPerTurn() / 4);
            StepperLaw law = new StepperLaw(lift.train(), turns, teeth);
            motors.add(law);
            lift.mechanism().law(rotor.body().name() + " field", rotor.turn(), law);
            return;
        }
        // A hand turns the crank as commanded.
        hand = lift.mechanism().drive(rotor.body().name() + " crank", rotor.turn(), turns);
    }

    /** The drive holds the deck; a latch that is closed carries what the springs lift too much. */
    private Stepper stepper(Settings settings) {
        if (latched) {
            lift.latch().orElseThrow().close(lift.start());
        }
        Equilibrium held = new Statics(lift.mechanism()).holding(lift.start());
        return held.found()
                ? new Stepper(lift.mechanism(), held, settings)
                : new Stepper(lift.mechanism(), lift.start(), settings);
    }

    private LatchWatch latchWatch(FoldLog log, Stepper stepper) {
        if (latched) {
            return LatchWatch.opening(lift.latch().orElseThrow(), log, stepper, command);
        }
        return lift.latch().isPresent() && isFolded(to)
                ? LatchWatch.catching(lift.latch().get(), log, stepper, command)
                : LatchWatch.idle(log, stepper, command);
    }

    /** When the run is over; an opening latch puts the command off, so ask at each step [s]. */
    private double end() {
        return command.end() + AFTER;
    }

    private FoldResult go(double step, DoubleConsumer done) {
        Stepper stepper = stepper(Settings.ofStep(step));
        EnergyLedger ledger = stepper.ledger();
        double height0 = ledger.height();
        double springs0 = ledger.springs() + ledger.joints();
        FoldLog log = new FoldLog(lift, direction, new FoldLog.Source(motors, hand), stepper);
        LatchWatch watch = latchWatch(log, stepper);
        boolean solved = true;
        boolean stalled = false;
        while (solved && !stalled && !log.hopeless() && stepper.state().time < end() - 0.5 * step) {
            if (stepper.steps() % LOOK == 0) {
                done.accept(stepper.state().time / end());
            }
            watch.beforeStep();
            solved = stepper.step() == Stepper.Outcome.DONE;
            if (solved) {
                log.look();
                stalled = log.slipped() >= LOST;
            }
        }
        if (log.hopeless() && !stalled && solved) {
            solved = false;
            log.event(
                    EventKind.NOT_SOLVED,
                    "The run is ended here: how the chatter goes on depends on damping that nobody"
                            + " knows, so it would say nothing about the machine beyond that.");
        } else if (solved) {
            watch.end();
        } else {
            log.event(
                    EventKind.NOT_SOLVED,
                    "The run could not be computed further: "
                            + stepper.failure().message()
                            + ". This says nothing about the machine.");
        }
        Outcome outcome = outcome(solved, stalled, log);
        log.end(outcome, to);
        Ledger account =
                new Ledger(
                        ledger.kinetic(),
                        ledger.height() - height0,
                        ledger.springs() + ledger.joints() - springs0,
                        ledger.work(),
                        ledger.friction(),
                        ledger.damping() + ledger.numerical(),
                        ledger.turnover());
        return new FoldResult(
                machine.name(),
                direction,
                outcome,
                log.samples(),
                log.events(),
                account,
                convergence(step, stepper, log));
    }

    private static Convergence convergence(double step, Stepper stepper, FoldLog log) {
        return new Convergence(
                step,
                stepper.steps(),
                stepper.solves() / (double) Math.max(1, stepper.steps()),
                stepper.halvings(),
                log.worstMargin(),
                Optional.empty(),
                Double.NaN);
    }

    private Outcome outcome(boolean solved, boolean stalled, FoldLog log) {
        if (!solved) {
            return Outcome.NOT_SOLVED;
        }
        if (stalled) {
            return Outcome.STALLED;
        }
        if (log.slipped() > 0) {
            return Outcome.LOST_STEPS;
        }
        boolean there = Math.abs(log.height() - to) < 0.02 * Math.abs(to - from);
        return there ? Outcome.ARRIVED : Outcome.HIT_STOP;
    }
}
