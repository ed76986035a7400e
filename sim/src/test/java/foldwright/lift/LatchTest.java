// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.FoldResult.Event;
import foldwright.lift.FoldResult.EventKind;
import foldwright.machine.Machine;
import foldwright.machine.linkage.Latch;
import foldwright.machine.part.Point;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The latch in runs, against the balance of the deck on paper. */
class LatchTest {
    private static final double STEP = 1e-2;
    private static final double RATE = 201.5;
    private static final double END = 8e6;
    private static final double FLAT = 2 * .190 * Math.sin(Math.toRadians(5.13));
    private static final double GAIN = 2 / Math.tan(Math.toRadians(5.13));

    /** Coils a third too strong: what they lift beyond deck and half the arms. */
    private static final double EXCESS =
            4 * RATE * (.115 - .006 - FLAT) - (5.20 + .5 * 8 * .1125) * 9.81;

    private static Sketch strong(double reach) {
        Sketch s = new Sketch();
        s.liftingCoils(RATE);
        s.pinFriction = 1e-5;
        s.guideFriction = 1e-5;
        s.endStiffness = OptionalDouble.of(END);
        s.latch = Optional.of(new Latch(new Point(0, 0, 0), 60, reach));
        return s;
    }

    private static Event only(FoldResult run, EventKind kind) {
        return run.events().stream().filter(e -> e.kind() == kind).findFirst().orElseThrow();
    }

    private static FoldResult start(Machine m) {
        return FoldRun.run(m, Direction.RAISING, FLAT, FLAT + .002, STEP);
    }

    @Test
    void carriesWhatTheSpringsLiftTooMuch() {
        Event opened = only(start(strong(5e-4).build()), EventKind.LATCH_OPENED);
        Matcher force =
                Pattern.compile("carried ([0-9.]+)\\hN of 60.0\\hN").matcher(opened.sentence());
        assertThat(force.find()).isTrue();
        assertThat(Double.parseDouble(force.group(1))).isCloseTo(EXCESS, within(.01));
        assertThat(EXCESS).isCloseTo(5.04, within(.01));
    }

    /** Screws give by F/k under a foot force F = excess n/tan(theta); springs then push less. */
    @Test
    void letsTheDeckJumpByTheGiveOfTheScrews() {
        FoldResult run = start(strong(5e-4).build());
        double root = .010 - 2e-3 - .5e-3;
        double give = 1 / END + .15 / (206e9 * Math.PI / 4 * root * root);
        double perNewton = GAIN * GAIN * give / 2;
        double jump = EXCESS * perNewton / (1 + 4 * RATE * perNewton);
        double mean =
                run.samples().stream()
                        .filter(x -> x.time() > .5 && x.time() < 1)
                        .mapToDouble(FoldResult.Sample::height)
                        .average()
                        .orElseThrow();
        assertThat(mean - run.samples().get(0).height()).isCloseTo(jump, within(.03 * jump));
        assertThat(only(run, EventKind.LATCH_OPENED).sentence())
                .contains(String.format(Locale.ROOT, "jumps up by %.2f", jump * 1e3));
        assertThat(jump).isGreaterThan(1e-4);
        assertThat(run.ledger().relativeError()).isLessThan(1e-3);
    }

    /** The command waits for the jump to be over; the run must then wait for the command. */
    @Test
    void theRunLastsUntilThePutOffCommandEnds() {
        FoldResult run = start(strong(5e-4).build());
        FoldResult.Sample last = run.samples().get(run.samples().size() - 1);
        assertThat(last.height()).isCloseTo(FLAT + .002, within(2e-4));
    }

    @Test
    void carriesNothingWhereWeightIsLeft() {
        Sketch s = Sketch.vanBench();
        s.latch = Optional.of(new Latch(new Point(.1, .05, 0), 60, 5e-4));
        FoldResult run = start(s.build());
        assertThat(only(run, EventKind.LATCH_OPENED).sentence()).contains("carried nothing");
    }

    @Test
    void catchesAFoldedDeckWithinItsReach() {
        FoldResult near =
                FoldRun.run(strong(5e-4).build(), Direction.LOWERING, FLAT + .004, FLAT, STEP);
        Event closed = only(near, EventKind.LATCH_CLOSED);
        assertThat(closed.height()).isBetween(FLAT, FLAT + 5e-4);
        FoldResult far =
                FoldRun.run(strong(0).build(), Direction.LOWERING, FLAT + .004, FLAT, STEP);
        assertThat(only(far, EventKind.LATCH_MISSED).sentence()).contains("above flat");
        assertThat(far.events()).noneMatch(e -> e.kind() == EventKind.LATCH_CLOSED);
    }
}
