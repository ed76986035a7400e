// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.FoldResult.Event;
import foldwright.lift.FoldResult.EventKind;
import foldwright.lift.FoldResult.MotorState;
import foldwright.lift.FoldResult.Outcome;
import foldwright.lift.FoldResult.Sample;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.solve.Stepper;
import foldwright.quantity.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Watches a run: samples at even times, and events told once each time they happen. */
final class FoldLog {
    /** Time between samples, over which torque and force are averaged [s]. */
    private static final double EVERY = 0.1;

    /** Nut force that counts as a side, against its largest size so far [1]. */
    private static final double SIDE = 0.02;

    /** Distance at which a stop counts as left [m]. */
    private static final double CLEAR = 1e-4;

    private final DrivenLift lift;
    private final Direction direction;
    private final List<StepperLaw> motors;
    private final Driver hand;
    private final Stepper stepper;
    private final Marker back;
    private final Marker front;
    private final List<Sample> samples = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();
    private final boolean[] pressing;
    private final double[] torque;
    private final double[] force;
    private int looks;
    private double nextSample;
    private double worstMargin = Double.POSITIVE_INFINITY;
    private double lastHeight;
    private double largestForce;
    private int side;
    private long slipped;
    private long halvings;
    private final ChatterWatch chatter = new ChatterWatch();
    private boolean clear;

    /**
     * What turns the screws.
     *
     * @param motors none where a hand turns
     * @param hand null where motors turn
     */
    record Source(List<StepperLaw> motors, Driver hand) {}

    FoldLog(DrivenLift lift, Direction direction, Source source, Stepper stepper) {
        this.lift = lift;
        this.direction = direction;
        motors = source.motors();
        hand = source.hand();
        this.stepper = stepper;
        double half = lift.machine().lift().width() / 2;
        back = lift.linkage().deck().marker(new Vec3(0, half, 0));
        front = lift.linkage().deck().marker(new Vec3(0, -half, 0));
        pressing = new boolean[lift.springs().size()];
        for (int i = 0; i < pressing.length; i++) {
            pressing[i] = presses(i, stepper.state());
        }
        torque = new double[lift.rotors().size()];
        force = new double[lift.screws().size()];
        lastHeight = height();
        for (int i = 0; i < force.length; i++) {
            force[i] = nutForce(i);
        }
        clear = lift.stops().clearance(stepper.state()) > CLEAR;
        looks = 1;
        sample();
    }

    double height() {
        return lift.height(stepper.state());
    }

    /** Poles that the motor furthest behind has slipped, either way. */
    long slipped() {
        return slipped;
    }

    double worstMargin() {
        return worstMargin;
    }

    List<Sample> samples() {
        return samples;
    }

    List<Event> events() {
        return events;
    }

    /** Takes note of the step just done. */
    void look() {
        looks++;
        for (int m = 0; m < motors.size(); m++) {
            StepperLaw law = motors.get(m);
            double lag = law.lag(angle(m));
            torque[m] += law.pullOut() * Math.sin(lag) * direction.sign();
            countSteps(law.slipped(angle(m)));
        }
        if (hand != null) {
            torque[0] += stepper.multiplier(hand.rowAt()) * direction.sign();
        }
        for (int i = 0; i < force.length; i++) {
            force[i] += nutForce(i);
        }
        springs();
        stops();
        if (stepper.halvings() > halvings) {
            if (halvings == 0) {
                event(EventKind.STEP_HALVED, "The time step had to be halved for the first time.");
            }
            halvings = stepper.halvings();
        }
        if (chatter.begins(stepper.steps(), halvings)) {
            event(
                    EventKind.CHATTERS,
                    String.format(
                            Locale.ROOT,
                            "The drive chatters at a pivot height of %.1f mm: steps are halved again and again.",
                            height() * 1e3));
        }
        if (stepper.state().time >= nextSample - 1e-9) {
            sample();
        }
    }

    /** Whether the drive chatters so much that the run is not worth its work. */
    boolean hopeless() {
        return chatter.hopeless();
    }

    private double angle(int m) {
        return lift.rotors().get(m).turn().value(stepper.state());
    }

    private void countSteps(long poles) {
        long now = Math.abs(poles);
        if (now > slipped) {
            if (slipped == 0) {
                event(
                        EventKind.STEPS_LOST,
                        String.format(
                                Locale.ROOT,
                                "The motor falls out of step at a pivot height of %.1f mm: four full steps lost.",
                                height() * 1e3));
            }
            slipped = now;
        }
    }

    private double nutForce(int i) {
        ScrewPart part = lift.screws().get(i).part();
        return part.raisingForce(stepper.multiplier(part.row().rowAt()));
    }

    private boolean presses(int i, State s) {
        SpringPart spring = lift.springs().get(i);
        return spring.law().force(spring.extent(spring.along().value(s))) != 0;
    }

    private void springs() {
        boolean changed = false;
        for (int i = 0; i < pressing.length; i++) {
            changed |= presses(i, stepper.state()) != pressing[i];
        }
        if (changed) {
            springsChanged();
        }
    }

    private void springsChanged() {
        List<String> touched = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        for (int i = 0; i < pressing.length; i++) {
            boolean now = presses(i, stepper.state());
            if (now != pressing[i]) {
                pressing[i] = now;
                (now ? touched : gone).add(lift.springs().get(i).name());
            }
        }
        springs(EventKind.SPRING_TOUCHED, touched, "is touched", "are touched");
        springs(EventKind.SPRING_LET_GO, gone, "lets go", "let go");
    }

    /** One event for all springs that do the same in the same step. */
    private void springs(EventKind kind, List<String> names, String one, String several) {
        if (!names.isEmpty()) {
            event(
                    kind,
                    String.format(
                            Locale.ROOT,
                            "%s %s at a pivot height of %.1f mm.",
                            listed(names),
                            names.size() == 1 ? one : several,
                            height() * 1e3));
        }
    }

    /** E.g. "Die springs 1, 2 and 4". */
    private static String listed(List<String> names) {
        String first = names.get(0);
        StringBuilder out = new StringBuilder();
        out.append(Character.toUpperCase(first.charAt(0))).append(first, 1, first.length());
        String group = first.substring(0, first.lastIndexOf(' ') + 1);
        for (int i = 1; i < names.size(); i++) {
            String name = names.get(i);
            out.append(i == names.size() - 1 ? " and " : ", ");
            out.append(name.startsWith(group) ? name.substring(group.length()) : name);
        }
        return out.toString();
    }

    /** A stop is met by a deck that has come from elsewhere, not by one that rests on it. */
    private void stops() {
        if (!clear) {
            clear = lift.stops().clearance(stepper.state()) > CLEAR;
        } else if (lift.stops().touching(stepper)) {
            clear = false;
            event(
                    EventKind.STOP_REACHED,
                    String.format(
                            Locale.ROOT,
                            "A stop is met at a pivot height of %.1f mm.",
                            height() * 1e3));
        }
    }

    private void sample() {
        State s = stepper.state();
        int busiest = 0;
        for (int i = 0; i < force.length; i++) {
            busiest = Math.abs(force[i]) > Math.abs(force[busiest]) ? i : busiest;
        }
        double nut = force[busiest] / looks;
        sides(nut);
        double height = height();
        double elapsed = samples.isEmpty() ? 0 : s.time - samples.get(samples.size() - 1).time();
        double speed = elapsed > 0 ? (height - lastHeight) / elapsed : 0;
        double droop = s.point(back).z() - s.point(front).z();
        samples.add(new Sample(s.time, height, speed, motor(), nut, droop));
        lastHeight = height;
        nextSample = s.time + EVERY;
        looks = 0;
        java.util.Arrays.fill(torque, 0);
        java.util.Arrays.fill(force, 0);
    }

    private MotorState motor() {
        if (motors.isEmpty()) {
            return crank();
        }
        int busiest = 0;
        for (int m = 0; m < torque.length; m++) {
            busiest = Math.abs(torque[m]) > Math.abs(torque[busiest]) ? m : busiest;
        }
        StepperLaw law = motors.get(busiest);
        double mean = torque[busiest] / Math.max(1, looks);
        double rate = lift.rotors().get(busiest).turn().rate(stepper.state());
        boolean moving = Math.abs(law.fieldSpeed()) > 1e-3;
        if (moving && slipped == 0 && Math.abs(mean) > 0 && stepper.steps() > 0) {
            worstMargin = Math.min(worstMargin, law.pullOut() / Math.abs(mean));
        }
        if (slipped > 0) {
            worstMargin = Math.min(worstMargin, 1);
        }
        return new MotorState(
                law.field(), angle(busiest), rate, mean, law.pullOut(), 4.0 * slipped);
    }

    private MotorState crank() {
        double rate = lift.rotors().get(0).turn().rate(stepper.state());
        double mean = torque[0] / Math.max(1, looks);
        double gives = lift.train().available(Math.abs(rate));
        if (Math.abs(rate) > 1e-3 && Math.abs(mean) > 0 && stepper.steps() > 0) {
            worstMargin = Math.min(worstMargin, gives / Math.abs(mean));
        }
        return new MotorState(angle(0), angle(0), rate, mean, gives, 0);
    }

    private void sides(double nut) {
        largestForce = Math.max(largestForce, Math.abs(nut));
        int now = Math.abs(nut) < SIDE * largestForce ? 0 : nut > 0 ? 1 : -1;
        if (now != 0 && side != 0 && now != side) {
            event(
                    EventKind.NUT_LOAD_REVERSED,
                    String.format(
                            Locale.ROOT,
                            "The load on the nut changes sides at a pivot height of %.1f mm.",
                            height() * 1e3));
        }
        side = now != 0 ? now : side;
    }

    void event(EventKind kind, String sentence) {
        events.add(new Event(kind, stepper.state().time, height(), sentence));
    }

    /**
     * Tells that the latch was opened before the drive began.
     *
     * @param force it carried [N], 0 for nothing
     * @param allowed force it may carry [N]
     * @param jump of the deck since then [m]
     */
    void latchOpened(double force, double allowed, double jump) {
        String carried =
                force == 0
                        ? "it carried nothing"
                        : "it carried "
                                + Printed.in("N", force)
                                + " of "
                                + Printed.in("N", allowed)
                                + " allowed, and the deck jumps up by "
                                + Printed.in("mm", jump)
                                + " against the drive";
        events.add(
                0,
                new Event(
                        EventKind.LATCH_OPENED,
                        samples.get(0).time(),
                        samples.get(0).height(),
                        "The latch is opened: " + carried + "."));
    }

    /** Tells that the folded deck was caught. */
    void latchClosed() {
        event(
                EventKind.LATCH_CLOSED,
                String.format(
                        Locale.ROOT,
                        "The latch closes at a pivot height of %.1f mm.",
                        height() * 1e3));
    }

    /**
     * Tells that the deck stopped short of the latch.
     *
     * @param above how far its place at the latch is from folded [m]
     */
    void latchMissed(double above) {
        event(
                EventKind.LATCH_MISSED,
                String.format(
                        Locale.ROOT,
                        "The latch does not close: the drive leaves the deck %.1f mm above flat.",
                        above * 1e3));
    }

    /** Closes the log with the last sample and how it ended. */
    void end(Outcome outcome, double goal) {
        looks = Math.max(1, looks);
        if (outcome == Outcome.STALLED) {
            event(
                    EventKind.STALLED,
                    String.format(
                            Locale.ROOT,
                            "The motor stalls at a pivot height of %.1f mm.",
                            height() * 1e3));
        } else if (outcome == Outcome.ARRIVED) {
            event(
                    EventKind.ARRIVED,
                    String.format(
                            Locale.ROOT,
                            "Arrived at %.1f mm, commanded %.1f mm.",
                            height() * 1e3,
                            goal * 1e3));
        }
    }
}
