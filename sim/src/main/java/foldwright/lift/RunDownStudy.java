// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.HoldResult.RunDown;
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

    /** Runs from a pivot height until it stands; empty if it does not move at all. */
    Optional<RunDown> from(double height) {
        DrivenLift lift = unpowered(machine, friction, detent, height);
        Stepper stepper = new Stepper(lift.mechanism(), lift.start(), Settings.ofStep(STEP));
        double top = 0;
        double energy = 0;
        double speed = 0;
        double arrival = 0;
        double before = lift.height(stepper.state());
        double lookedAt = before;
        double nextLook = 1;
        boolean arrived = false;
        while (!arrived && stepper.state().time < LONGEST) {
            if (stepper.step() == Stepper.Outcome.FAILED) {
                break;
            }
            double now = lift.height(stepper.state());
            arrived = lift.stops().touching(stepper);
            if (!arrived) {
                speed = (before - now) / STEP;
                energy = stepper.ledger().kinetic();
                arrival = speed;
                top = Math.max(top, speed);
            }
            before = now;
            if (stepper.state().time >= nextLook) {
                if (Math.abs(lookedAt - now) < STILL) {
                    break;
                }
                lookedAt = now;
                nextLook += 1;
            }
        }
        double end = lift.height(stepper.state());
        if (height - end < 1e-4 * height) {
            return Optional.empty();
        }
        return Optional.of(
                new RunDown(
                        height,
                        end,
                        stepper.state().time,
                        top,
                        arrived ? arrival : 0,
                        arrived ? energy : 0,
                        friction));
    }

    /** Movement of the deck while it should hold; not a number where a step failed [m]. */
    static double drift(
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
        return solved ? lift.height(stepper.state()) - before : Double.NaN;
    }
}
