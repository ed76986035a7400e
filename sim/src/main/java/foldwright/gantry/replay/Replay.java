// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GantryTrouble;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Stability;
import foldwright.gantry.model.Statics;
import foldwright.gantry.route.Travel;
import foldwright.motion.Course;
import foldwright.motion.CourseSample;
import foldwright.motion.ToolpathException;
import java.util.List;
import java.util.Locale;

/**
 * Runs a course through the kernel. Starts at rest, belts in balance, at the course's first place;
 * memory does not grow with the length of the course, and a step allocates nothing.
 */
public final class Replay {
    /** Every 4096th step is looked at for numbers that are none. */
    private static final long LOOK = 4095;

    private final GantryModel model;
    private final ReplaySettings settings;
    private final Stability stability;

    public Replay(GantryModel model, ReplaySettings settings) {
        this.model = model;
        this.settings = settings;
        stability = Stability.of(model, settings.step());
    }

    /** The step that will be used, and why. */
    public Stability stability() {
        return stability;
    }

    /** A replay without further listeners. */
    public ReplayResult run(Course course) throws ToolpathException {
        return run(course, List.of());
    }

    /**
     * Replays a course from its start to its end and the tail.
     *
     * @throws ToolpathException where the toolpath cannot be read on, or leaves the travel
     */
    public ReplayResult run(Course course, List<ReplayListener> listeners)
            throws ToolpathException {
        GantryKernel kernel = new GantryKernel(model);
        ReplayStatistics statistics = new ReplayStatistics(kernel);
        CourseSample told = new CourseSample();
        double h = stability.step();
        boolean running = course.at(0, told);
        begin(kernel, told);
        double end = 0;
        long n = 0;
        while (running || n * h <= end + settings.tail()) {
            double time = n * h;
            running = course.at(time, told);
            end = running ? time : end;
            double x = settings.originX() + told.x;
            double y = settings.originY() + told.y;
            checkReach(x, y, told);
            kernel.command(x, y, told.vx, told.vy);
            kernel.evaluate(h);
            statistics.add(time, told.line, x, y);
            for (int i = 0; i < listeners.size(); i++) {
                listeners.get(i).at(time, told.line, x, y, kernel);
            }
            kernel.advance(h);
            n++;
            if ((n & LOOK) == 0) {
                checkFinite(kernel, n * h);
            }
        }
        checkFinite(kernel, n * h);
        return statistics.result(end, n, stability);
    }

    /** Rest in balance: unequal pretension has skewed the bridge before the first move. */
    private void begin(GantryKernel kernel, CourseSample told) throws ToolpathException {
        double x = settings.originX() + told.x;
        double y = settings.originY() + told.y;
        checkReach(x, y, told);
        Statics rest = new Statics(model, Statics.Hold.FIELDS);
        rest.settle(x, y, Load.NONE);
        kernel.standAs(rest.kernel());
    }

    private void checkReach(double x, double y, CourseSample told) throws ToolpathException {
        Travel travel = model.layout().travel();
        if (!travel.contains(x, y)) {
            throw new ToolpathException(
                    ToolpathException.Fault.OUT_OF_REACH,
                    told.line,
                    String.format(Locale.ROOT, "X %.3f Y %.3f mm", 1e3 * told.x, 1e3 * told.y),
                    String.format(
                            Locale.ROOT,
                            "X %.3f to %.3f, Y %.3f to %.3f mm, the travel of the carriage",
                            1e3 * (travel.xMin() - settings.originX()),
                            1e3 * (travel.xMax() - settings.originX()),
                            1e3 * (travel.yMin() - settings.originY()),
                            1e3 * (travel.yMax() - settings.originY())));
        }
    }

    private static void checkFinite(GantryKernel kernel, double time) {
        if (!Double.isFinite(kernel.skew()) || !Double.isFinite(kernel.toolX())) {
            throw new GantryTrouble(
                    String.format(
                            Locale.ROOT,
                            "the run left the numbers before %.4f s: the step is too long for a"
                                    + " part of this machine",
                            time));
        }
    }
}
