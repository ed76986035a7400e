// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.keys.Keys;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One unfolding or folding run in time with the motor's real commands.
 *
 * @param machine name of the machine
 * @param direction unfolding raises, folding lowers
 * @param outcome how it ended
 * @param samples the run at even times, first and last included
 * @param events what happened, in time order
 * @param ledger where the energy went over the whole run
 * @param convergence how far the numbers can be trusted
 */
public record FoldResult(
        String machine,
        Direction direction,
        Outcome outcome,
        List<Sample> samples,
        List<Event> events,
        Ledger ledger,
        Convergence convergence) {

    /** How a run ended. */
    public enum Outcome {
        /** Reached the asked height with every commanded step made. */
        ARRIVED,
        /** Reached the end of its commands, but the motor lost steps: the height is wrong. */
        LOST_STEPS,
        /** The motor fell out of step and stayed there. */
        STALLED,
        /** Ran into a stop. */
        HIT_STOP,
        /** The solver gave up, which says nothing about the machine; the last event says where. */
        NOT_SOLVED;

        /** The words a person reads. */
        public String words() {
            return Keys.words(this);
        }
    }

    public FoldResult {
        Objects.requireNonNull(outcome, "outcome");
        samples = List.copyOf(samples);
        events = List.copyOf(events);
    }

    /** The same result, with how the run with twice the step ended and what its margin was off. */
    FoldResult withHalving(Outcome coarse, double change) {
        Convergence c = convergence;
        return new FoldResult(
                machine,
                direction,
                outcome,
                samples,
                events,
                ledger,
                new Convergence(
                        c.step(),
                        c.steps(),
                        c.solves(),
                        c.halvedSteps(),
                        c.worstMargin(),
                        Optional.of(coarse),
                        change));
    }

    /**
     * The state at one time.
     *
     * @param time since the command began [s]
     * @param height pivot height at the middle of the deck [m]
     * @param deckSpeed upward [m/s]
     * @param motor state of the most loaded motor
     * @param nutForce on the most loaded nut, positive when the screw pushes the lift up [N]
     * @param droop left side above right side, at the deck pins [m]
     */
    public record Sample(
            double time,
            double height,
            double deckSpeed,
            MotorState motor,
            double nutForce,
            double droop) {}

    /**
     * One motor at one time.
     *
     * @param commanded angle of the field [rad, shaft]
     * @param turned angle of the rotor [rad]
     * @param speed of the rotor [rad/s]
     * @param torque the field gives the rotor, in the sense of the motion [N·m]
     * @param pullOut torque at which it would fall out at this speed [N·m]
     * @param stepsLost full steps the rotor has fallen behind for good, in whole poles of four
     *     steps
     */
    public record MotorState(
            double commanded,
            double turned,
            double speed,
            double torque,
            double pullOut,
            double stepsLost) {}

    /**
     * Something that happened.
     *
     * @param kind what
     * @param time when [s]
     * @param height pivot height [m]
     * @param sentence one plain sentence with numbers
     */
    public record Event(EventKind kind, double time, double height, String sentence) {}

    /** Kinds of events. */
    public enum EventKind {
        SPRING_LET_GO,
        SPRING_TOUCHED,
        NUT_LOAD_REVERSED,
        STEPS_LOST,
        STALLED,
        STOP_REACHED,
        LATCH_OPENED,
        LATCH_CLOSED,
        LATCH_MISSED,
        ARRIVED,
        STEP_HALVED,
        CHATTERS,
        NOT_SOLVED
    }

    /**
     * Where the energy went [J]; each entry is a sum over the run.
     *
     * @param kinetic gained by moving parts
     * @param potential gained by weights
     * @param springs gained by springs and by bent or squeezed parts
     * @param motor work the field did on the rotors
     * @param friction turned to heat in pins, guides, threads, collars and belts
     * @param damping taken by the integrator and by damped joints
     * @param turnedOver sum of the sizes of all flows, the scale the error is measured by
     */
    public record Ledger(
            double kinetic,
            double potential,
            double springs,
            double motor,
            double friction,
            double damping,
            double turnedOver) {
        /** What does not add up [J]: motor - friction - damping - all that was gained. */
        public double closingError() {
            return motor - friction - damping - kinetic - potential - springs;
        }

        /** Closing error over the energy turned over [1]. */
        public double relativeError() {
            return turnedOver == 0 ? 0 : Math.abs(closingError()) / turnedOver;
        }
    }

    /**
     * How far the numbers can be trusted.
     *
     * @param step time step [s]
     * @param steps taken
     * @param solves Newton solves a step, mean [1]
     * @param halvedSteps steps that had to be bisected
     * @param worstMargin lowest pull-out over torque met while moving [1]
     * @param atTwiceTheStep how the run with twice the step ended, where one was made
     * @param marginChangeOnHalving relative change of {@code worstMargin} in a second run with half
     *     the step; not a number when that run was not asked for or one of both failed
     */
    public record Convergence(
            double step,
            long steps,
            double solves,
            long halvedSteps,
            double worstMargin,
            Optional<Outcome> atTwiceTheStep,
            double marginChangeOnHalving) {}
}
