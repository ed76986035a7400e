// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.mechanics.solve.Stepper;
import java.util.Optional;

/** Opens the latch of a folded lift before its drive begins, and lets it catch one that folds. */
final class LatchWatch {
    /** Time that a deck let go has to come to rest before the drive begins [s]. */
    private static final double OPENING = 1;

    /** Part of that time over which its height is averaged: it rings on its screws. */
    private static final double HEARD = 0.5;

    /** Load on a latch that counts as none [N]. */
    private static final double LIGHT = 0.01;

    /** What comes next. */
    private enum Stage {
        /** Closed: open it before the first step. */
        CLOSED,
        /** Just opened: tell what it did once the deck has come to rest. */
        OPENED,
        /** Open: catch the deck once the command has ended. */
        CATCHING,
        IDLE
    }

    private final Optional<DeckLatch> latch;
    private final FoldLog log;
    private final Stepper stepper;
    private final RiseCommand command;
    private Stage stage;
    private double force;
    private double height;
    private double sum;
    private int looks;

    private LatchWatch(
            Optional<DeckLatch> latch,
            FoldLog log,
            Stepper stepper,
            RiseCommand command,
            Stage stage) {
        this.latch = latch;
        this.log = log;
        this.stepper = stepper;
        this.command = command;
        this.stage = stage;
    }

    /** For a run that begins with the latch closed; the drive waits for a deck that jumps. */
    static LatchWatch opening(DeckLatch latch, FoldLog log, Stepper stepper, RiseCommand command) {
        return new LatchWatch(Optional.of(latch), log, stepper, command, Stage.CLOSED);
    }

    /** For a run that ends folded. */
    static LatchWatch catching(DeckLatch latch, FoldLog log, Stepper stepper, RiseCommand command) {
        return new LatchWatch(Optional.of(latch), log, stepper, command, Stage.CATCHING);
    }

    /** For a run that never meets a latch. */
    static LatchWatch idle(FoldLog log, Stepper stepper, RiseCommand command) {
        return new LatchWatch(Optional.empty(), log, stepper, command, Stage.IDLE);
    }

    /** Called before every step. */
    void beforeStep() {
        double time = stepper.state().time;
        switch (stage) {
            case CLOSED -> open();
            case OPENED -> {
                if (time >= command.begin()) {
                    tellOpened();
                } else if (time >= command.begin() - HEARD * OPENING) {
                    sum += log.height();
                    looks++;
                }
            }
            case CATCHING -> {
                if (time >= command.end() && latch.orElseThrow().reaches(stepper.state())) {
                    close();
                }
            }
            case IDLE -> {}
        }
    }

    private void open() {
        DeckLatch closed = latch.orElseThrow();
        force = closed.force(stepper);
        height = log.height();
        if (force > LIGHT) {
            command.postpone(OPENING);
        }
        closed.open();
        stepper.changed();
        stage = Stage.OPENED;
    }

    private void tellOpened() {
        double allowed = latch.orElseThrow().allowedForce();
        double now = looks == 0 ? log.height() : sum / looks;
        log.latchOpened(force > LIGHT ? force : 0, allowed, now - height);
        stage = Stage.IDLE;
    }

    private void close() {
        latch.orElseThrow().close(stepper.state());
        stepper.changed();
        log.latchClosed();
        stage = Stage.IDLE;
    }

    /** Called after the last step. */
    void end() {
        if (stage == Stage.OPENED) {
            tellOpened();
        } else if (stage == Stage.CATCHING) {
            log.latchMissed(latch.orElseThrow().above(stepper.state()));
        }
        stage = Stage.IDLE;
    }
}
