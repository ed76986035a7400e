// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.linkage.Latch;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Stop;
import foldwright.mechanics.solve.Stepper;

/**
 * The latch: while closed, its point of the deck may not rise above where it caught it. It pulls
 * down only; it is open until {@link #close}.
 */
final class DeckLatch {
    private final Latch latch;
    private final Coordinate rise;
    private final Stop stop;

    /** Adds the latch to a mechanism assembled folded. */
    DeckLatch(Latch latch, Mechanism mechanism, Linkage linkage) {
        this.latch = latch;
        Marker held = linkage.deck().marker(Anchors.vector(latch.at()));
        Vec3 folded = ScrewLines.place(held, mechanism.start());
        Marker beside =
                mechanism
                        .base()
                        .markerFromBase(new Pose(folded, Rotation.frame(new Vec3(0, 0, 1))));
        rise = mechanism.travel(beside, held);
        stop = mechanism.stop("latch", rise, 0, Stop.Side.BELOW);
        stop.release();
    }

    /** Whether the deck stands where the latch catches it. */
    boolean reaches(State s) {
        return rise.value(s) <= latch.reach();
    }

    /** How far its point stands above the folded place [m]. */
    double above(State s) {
        return rise.value(s);
    }

    /** Holds the deck from now on, at the folded place or at most where it stands above it. */
    void close(State s) {
        stop.limit(Math.max(0, rise.value(s)));
        stop.engage();
    }

    /** Lets go. */
    void open() {
        stop.release();
    }

    /** Upward force of the deck on it now [N]. */
    double force(Stepper stepper) {
        return Math.max(0, stepper.multiplier(stop.rowAt()));
    }

    /** Force it may carry [N]. */
    double allowedForce() {
        return latch.allowedForce();
    }
}
