// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.Stability;
import java.util.ArrayList;
import java.util.List;

/**
 * Running statistics of a replay, bounded in memory and without allocation. Largest values look at
 * every step, distributions and the hold of the teeth at every fourth.
 */
public final class ReplayStatistics {
    /** Distributions, map and teeth take every fourth step: 0.4 ms against modes under 300 Hz. */
    private static final long EVERY = 3;

    private final GantryKernel kernel;
    private final double span;
    private final double toolX;
    private final double toolY;
    private final Channel skew;
    private final Channel errorX;
    private final Channel errorY;
    private final Channel error;
    private final ErrorMap map;
    private final EventWatch events;
    private long added;
    private double largestOff2;
    private double worstOff2 = -1;
    private double guideMoment;
    private double carriageForce;
    private double carriageMoment;

    public ReplayStatistics(GantryKernel kernel) {
        this.kernel = kernel;
        span = kernel.model().span();
        toolX = kernel.model().tool().x();
        toolY = kernel.model().tool().y();
        int size = kernel.savedSize();
        skew = new Channel(size);
        errorX = new Channel(size);
        errorY = new Channel(size);
        error = new Channel(size);
        map = new ErrorMap(kernel.model().layout().travel());
        events = new EventWatch(kernel);
    }

    /**
     * Takes in the kernel after an evaluation.
     *
     * @param x commanded place of the carriage origin [m]
     * @param y commanded place of the bridge [m]
     */
    public void add(double time, long line, double x, double y) {
        GantryKernel k = kernel;
        double dx = k.toolX() - x - toolX;
        double dy = k.toolY() - y - toolY;
        double off2 = dx * dx + dy * dy;
        double ends = k.skew() * span;
        keep(skew, ends, time, line, x, y);
        keep(errorX, dx, time, line, x, y);
        keep(errorY, dy, time, line, x, y);
        largestOff2 = off2 > largestOff2 ? off2 : largestOff2;
        if (off2 > worstOff2) {
            worstOff2 = off2;
            keep(error, Math.sqrt(off2), time, line, x, y);
        }
        events.look(line);
        guideMoment = larger(guideMoment, k.guideMoment());
        carriageForce = larger(carriageForce, k.carriageForce());
        carriageMoment = larger(carriageMoment, k.carriageMoment());
        if ((++added & EVERY) == 0) {
            count(ends, dx, dy, Math.sqrt(off2));
            map.add(x, y, Math.sqrt(largestOff2));
            largestOff2 = 0;
            events.lookAtTeeth(line);
        }
    }

    private void count(double ends, double dx, double dy, double off) {
        skew.count(ends);
        errorX.count(dx);
        errorY.count(dy);
        error.count(off);
    }

    private static double larger(double size, double value) {
        double s = Math.abs(value);
        return s > size ? s : size;
    }

    private void keep(Channel c, double value, double time, long line, double x, double y) {
        if (c.exceeds(value)) {
            c.note(time, line, x, y);
            kernel.save(c.saved());
        }
    }

    private GantryState state(Channel c) {
        kernel.restore(c.saved());
        return GantryState.of(kernel, c.placeX(), c.placeY());
    }

    ReplayResult result(double duration, long steps, Stability stability) {
        ReplayEvents seen = events.result(stability.step());
        List<Double> torques = new ArrayList<>();
        for (int m = 0; m < kernel.motors(); m++) {
            torques.add(kernel.peakTorque(m));
        }
        return new ReplayResult(
                duration,
                steps,
                stability,
                skew.result("skew end to end", "m"),
                errorX.result("tool error x", "m"),
                errorY.result("tool error y", "m"),
                error.result("tool error", "m"),
                state(skew),
                state(error),
                events.leastTension(),
                events.mostTension(),
                torques,
                guideMoment,
                carriageForce,
                carriageMoment,
                seen,
                map);
    }
}
