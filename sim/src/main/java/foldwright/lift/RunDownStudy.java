// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.HoldResult.RunDown;
import foldwright.lift.HoldResult.RunEnd;
import foldwright.machine.Machine;
import foldwright.machine.drive.StepperDrive;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Statics;
import foldwright.mechanics.solve.Stepper;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * The lift let go with the power off: thread, collar, belt and detent against the load, in time.
 */
final class RunDownStudy {
    private static final double STEP = 2e-3;
    private static final double LONGEST = 120;
    private static final double SETTLING = 1;

    /** How often the time is told [s]. */
    private static final double LOOK = 30;

    /** Slower than this over a second it counts as standing still [m/s]. */
    private static final double STILL = 1e-6;

    /** Elastic turn of a rotor held by its detent [rad/(N·m)]. */
    private static final double DETENT_GIVE = 1e-3;

    private final Machine machine;
    private final double friction;
    private final double detent;

    RunDownStudy(Machine machine, double friction, double detent) {
        this.machine = machine;
        this.friction = friction;
        this.detent = detent;
    }

    private static DrivenLift unpowered(
            Machine machine, double friction, double detent, double height) {
        DrivenLift lift = new DrivenLift(machine, Give.IDEAL, friction, height);
        for (DrivenLift.Rotor rotor : lift.rotors()) {
            if (detent > 0) {
                lift.mechanism()
                        .friction(
                                rotor.body().name() + " detent",
                                rotor.turn(),
                                FrictionBound.constant(detent),
                                DETENT_GIVE);
            }
        }
        return lift;
    }

    /** Runs from a pivot height until it arrives or stands, a step fails or the time is over. */
    RunDown from(double height) {
        DrivenLift lift = unpowered(machine, friction, detent, height);
        Stepper stepper = new Stepper(lift.mechanism(), lift.start(), Settings.ofStep(STEP));
        double top = 0;
        double energy = 0;
        double speed = 0;
        double before = lift.height(stepper.state());
        double lookedAt = before;
        double nextLook = 1;
        RunEnd end = RunEnd.MOVING;
        while (end == RunEnd.MOVING && stepper.state().time < LONGEST) {
            if (stepper.step() == Stepper.Outcome.FAILED) {
                end = RunEnd.NOT_SOLVED;
                break;
            }
            double now = lift.height(stepper.state());
            if (lift.stops().touching(stepper)) {
                end = RunEnd.ARRIVED;
            } else {
                speed = (before - now) / STEP;
                energy = stepper.ledger().kinetic();
                top = Math.max(top, speed);
            }
            before = now;
            if (end == RunEnd.MOVING && stepper.state().time >= nextLook) {
                end = Math.abs(lookedAt - now) < STILL ? RunEnd.STANDS : RunEnd.MOVING;
                lookedAt = now;
                nextLook += 1;
            }
        }
        boolean arrived = end == RunEnd.ARRIVED;
        return new RunDown(
                height,
                lift.height(stepper.state()),
                stepper.state().time,
                top,
                arrived ? speed : 0,
                arrived ? energy : 0,
                friction,
                end,
                end == RunEnd.NOT_SOLVED ? Optional.of(stepper.failure()) : Optional.empty());
    }

    /** Lets it stand where it should hold and tells how far the deck moves, or what failed. */
    static HourHeld stand(
            Machine machine,
            double friction,
            double height,
            double seconds,
            double step,
            DoubleConsumer progress) {
        double detent =
                machine.drive().source() instanceof StepperDrive s ? s.motor().detentTorque() : 0;
        DrivenLift lift = unpowered(machine, friction, detent, height);
        Equilibrium held = new Statics(lift.mechanism()).holding(lift.start());
        Settings settings = Settings.ofStep(step);
        Stepper stepper =
                held.found()
                        ? new Stepper(lift.mechanism(), held, settings)
                        : new Stepper(lift.mechanism(), lift.start(), settings);
        // Elastic parts first take up the load; what comes after is creep.
        boolean solved = stepper.runTo(SETTLING) == Stepper.Outcome.DONE;
        double before = lift.height(stepper.state());
        for (double t = LOOK; solved && t < seconds + LOOK; t += LOOK) {
            solved = stepper.runTo(SETTLING + Math.min(t, seconds)) == Stepper.Outcome.DONE;
            progress.accept(Math.min(t, seconds));
        }
        return solved
                ? HourHeld.moved(height, friction, lift.height(stepper.state()) - before)
                : HourHeld.broken(height, friction, stepper.failure());
    }
}
