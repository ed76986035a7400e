// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;

/**
 * One-sided row: a coordinate may not pass a limit; the stop pushes, it never pulls. Gap and push
 * complement each other (Signorini): gap >= 0, push >= 0, one of them zero.
 *
 * <p>Impacts are plastic: what closes within a step stays closed, and the gap relaxes to zero over
 * the damping time of the row, which in a run is at least two steps. Bouncing is not modelled; a
 * stop that shall give is a push spring.
 */
public final class Stop extends ScalarRow {
    /** The side on which the coordinate may be. */
    public enum Side {
        ABOVE,
        BELOW
    }

    private boolean touching;
    private boolean present = true;

    /**
     * @param limit value that may not be passed [m or rad]
     * @param side where the coordinate may be
     */
    public Stop(String name, Coordinate coordinate, double limit, Side side) {
        super(name, coordinate, side == Side.ABOVE ? 1 : -1);
        aim(limit);
        soften(0, 1e-9, 0);
    }

    /** Moves the limit [m or rad]. */
    public void limit(double value) {
        aim(value);
    }

    /** Is there from now on. */
    public void engage() {
        present = true;
    }

    /** Is gone from now on: the coordinate may pass the limit, the push is zero. */
    public void release() {
        present = false;
        touching = false;
    }

    /** Gap at a state [m or rad]; negative when passed. */
    public double gap(State s) {
        return sign() * (coordinate().value(s) - target());
    }

    @Override
    public boolean engaged() {
        return touching;
    }

    /**
     * Decides from the approach, gap + damping time x rate of the gap [m or rad; negative presses],
     * and the push [N, N m]; tells whether the state changed.
     */
    public boolean decide(double approach, double push) {
        boolean before = touching;
        touching = present && (touching ? push >= 0 : approach < 0);
        return before != touching;
    }

    /** Sets the state from the present pose and motion, before a run: touches unless it opens. */
    public void start(State s) {
        touching = present && gap(s) <= 0 && sign() * coordinate().rate(s) <= 0;
    }

    /** Restores a remembered contact state. */
    public void restore(boolean contact) {
        touching = contact;
    }
}
