// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Keeps the machine at a chosen rate, for pictures and films. Memory grows with the length of the
 * replay; choose the rate of the film.
 */
public final class ReplayFrames implements ReplayListener {
    /**
     * One picture.
     *
     * @param time [s]
     * @param line of the toolpath
     * @param x commanded place of the carriage origin [m]
     * @param y commanded place of the bridge [m]
     * @param state of the machine
     */
    public record Frame(double time, long line, double x, double y, GantryState state) {}

    private final List<Frame> frames = new ArrayList<>();
    private final double interval;
    private double next;

    /**
     * Starts a film.
     *
     * @param rate pictures a second
     */
    public ReplayFrames(double rate) {
        if (!(rate > 0)) {
            throw new IllegalArgumentException("rate is " + rate + "; allowed: above 0");
        }
        interval = 1 / rate;
    }

    @Override
    public void at(double time, long line, double x, double y, GantryKernel kernel) {
        if (time + 1e-12 >= next) {
            frames.add(new Frame(time, line, x, y, GantryState.of(kernel, x, y)));
            next += interval;
        }
    }

    /** The pictures so far, in order of time. */
    public List<Frame> frames() {
        return Collections.unmodifiableList(frames);
    }
}
