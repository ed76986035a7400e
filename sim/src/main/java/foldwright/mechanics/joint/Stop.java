// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;

/**
 * One-sided row: a coordinate may not pass a limit; the stop pushes, it never pulls. Gap and push
 * complement each other (Signorini): gap >= 0, push >= 0, one of them zero.
 */
public final class Stop extends ScalarRow {
    /** The side on which the coordinate may be. */
    public enum Side {
        ABOVE,
        BELOW
    }

    private boolean touching;

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

    @Override
    public boolean engaged() {
        return touching;
    }

    /**
     * Decides from gap [m or rad, negative when passed] and push [N, N m]; tells whether the state
     * changed.
     */
    public boolean decide(double gap, double push) {
        boolean before = touching;
        touching = touching ? push >= 0 : gap < 0;
        return before != touching;
    }

    /** Sets the state from the present pose, before a run. */
    public void start(State s, double[] phi) {
        touching = phi[rowAt()] <= 0;
    }

    /** Restores a remembered contact state. */
    public void restore(boolean contact) {
        touching = contact;
    }
}
