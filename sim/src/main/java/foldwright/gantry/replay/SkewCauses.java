// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Statics;
import foldwright.motion.Course;
import foldwright.motion.CourseSample;
import foldwright.motion.ToolpathException;

/**
 * What the quasi-static figure of the largest skew misses on a toolpath. Found by replaying with
 * one cause taken away at a time; the shares add up to the replay with everything on. Friction may
 * hide skew: its share is then negative.
 *
 * @param quasiStatic largest skew end to end of steady accelerations along the path, no friction
 *     [m]
 * @param ringing what a replay that stops at every corner, without friction, adds [m]
 * @param cornerSteps what passing corners at speed, a step of the commanded velocity, adds [m]
 * @param friction what friction of rails, carriage and bearings adds or hides [m]
 * @param total largest skew of the replay with everything on [m]
 * @param line of the toolpath where that is
 */
public record SkewCauses(
        double quasiStatic,
        double ringing,
        double cornerSteps,
        double friction,
        double total,
        long line) {
    /** Time between two looks at the commanded acceleration [s]. */
    private static final double LOOK = 2e-3;

    /** Places with the largest linear skew that are settled exactly. */
    private static final int CANDIDATES = 12;

    /**
     * Replays three times and settles the worst accelerations.
     *
     * @param moving the toolpath as it is run
     * @param stopping the same toolpath with a full stop at every corner
     */
    public static SkewCauses of(
            GantryModel model, ReplaySettings settings, CourseSource moving, CourseSource stopping)
            throws ToolpathException {
        GantryModel free = model.frictionless();
        double steady = quasiStatic(free, settings, moving.open());
        double stops = new Replay(free, settings).run(stopping.open()).skew().peak();
        double corners = new Replay(free, settings).run(moving.open()).skew().peak();
        ChannelResult all = new Replay(model, settings).run(moving.open()).skew();
        return new SkewCauses(
                steady,
                stops - steady,
                corners - stops,
                all.peak() - corners,
                all.peak(),
                all.line());
    }

    /** Keeps the places with the largest linear skew moment and settles those. */
    private static double quasiStatic(GantryModel model, ReplaySettings settings, Course course)
            throws ToolpathException {
        double[][] worst = new double[CANDIDATES][5];
        CourseSample told = new CourseSample();
        UnitSkew unit = new UnitSkew(model);
        double time = 0;
        while (course.at(time, told)) {
            double x = settings.originX() + told.x;
            double y = settings.originY() + told.y;
            keep(worst, unit.size(x, y, told.ax, told.ay), x, y, told);
            time += LOOK;
        }
        Statics statics = new Statics(model, Statics.Hold.FIELDS);
        double largest = 0;
        for (double[] w : worst) {
            Load load = Load.accelerating(w[3], w[4]);
            double skew = statics.settle(w[1], w[2], load).endToEnd();
            largest = Math.max(largest, Math.abs(skew));
        }
        return largest;
    }

    private static void keep(double[][] worst, double size, double x, double y, CourseSample s) {
        int least = 0;
        for (int i = 0; i < worst.length; i++) {
            boolean near = Math.hypot(worst[i][1] - x, worst[i][2] - y) < 2e-3;
            if (near) {
                least = i;
                break;
            }
            least = worst[i][0] < worst[least][0] ? i : least;
        }
        if (size > worst[least][0]) {
            worst[least] = new double[] {size, x, y, s.ax, s.ay};
        }
    }

    /** Skew a unit of acceleration with play closed, bilinear over a grid of the travel. */
    private static final class UnitSkew {
        private static final int GRID = 5;

        private final GantryModel model;
        private final double[][][] perX = new double[GRID][GRID][2];

        UnitSkew(GantryModel model) {
            this.model = model;
            Statics statics = new Statics(model.closed(), Statics.Hold.FIELDS);
            for (int i = 0; i < GRID; i++) {
                for (int j = 0; j < GRID; j++) {
                    double x = model.layout().travel().xAt(i / (GRID - 1.0));
                    double y = model.layout().travel().yAt(j / (GRID - 1.0));
                    double rest = statics.settle(x, y, Load.NONE).skew();
                    perX[i][j][0] = statics.settle(x, y, Load.accelerating(1, 0)).skew() - rest;
                    perX[i][j][1] = statics.settle(x, y, Load.accelerating(0, 1)).skew() - rest;
                }
            }
        }

        double size(double x, double y, double ax, double ay) {
            var t = model.layout().travel();
            double u = place((x - t.xMin()) / (t.xMax() - t.xMin()));
            double v = place((y - t.yMin()) / (t.yMax() - t.yMin()));
            int i = (int) Math.min(GRID - 2, Math.floor(u));
            int j = (int) Math.min(GRID - 2, Math.floor(v));
            double sum = 0;
            double[] a = {ax, ay};
            for (int k = 0; k < 2; k++) {
                double low = perX[i][j][k] + (u - i) * (perX[i + 1][j][k] - perX[i][j][k]);
                double high =
                        perX[i][j + 1][k] + (u - i) * (perX[i + 1][j + 1][k] - perX[i][j + 1][k]);
                sum += a[k] * (low + (v - j) * (high - low));
            }
            return Math.abs(sum);
        }

        private static double place(double share) {
            return Math.max(0, Math.min(1, share)) * (GRID - 1);
        }
    }
}
