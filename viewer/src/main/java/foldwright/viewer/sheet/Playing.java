// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.study.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * A run on the sheet.
 *
 * @param clock time, speed and what is shown
 * @param marks moments to jump to
 * @param way the scale along a toolpath; absent where the height scale is the run's axis
 */
public record Playing(Clock clock, List<Mark> marks, Optional<Way> way) {
    public Playing {
        marks = List.copyOf(marks);
    }

    /** What the controls show. */
    public enum Controls {
        /** None: a still or a film. */
        NONE,
        STANDING,
        RUNNING
    }

    /** Once, or from the start again. */
    public enum Again {
        ONCE,
        LOOP
    }

    /**
     * Time and speed.
     *
     * @param shown what is shown, e.g. "unfolding, as computed"
     * @param time e.g. "18.80 s of 60.3 s"
     * @param speed e.g. "20x slower"
     * @param speedShare between the slowest 0 and the fastest 1
     */
    public record Clock(
            String shown,
            String time,
            String speed,
            double speedShare,
            Controls controls,
            Again again) {}

    /**
     * A moment.
     *
     * @param at place on the axis: pivot height or way [m]
     * @param time when [s]
     * @param verdict how bad it is; absent for things that merely happen
     * @param words two or three
     * @param line of the toolpath, 0 where there is none
     */
    public record Mark(
            double at, double time, Optional<Verdict> verdict, String words, long line) {}

    /**
     * The way along a toolpath, the stray of the tool beside it, and its track on the table.
     *
     * @param end length of the path [m]
     * @param now place on it [m]
     * @param corners where it turns
     * @param stray errors along the way
     * @param track the path seen from above
     * @param notes lines below the table
     */
    public record Way(
            double end,
            double now,
            List<Corner> corners,
            StrayCurve stray,
            Track track,
            List<String> notes) {
        Way noted(List<String> lines) {
            return new Way(end, now, corners, stray, track, lines);
        }
    }

    /** The same with other lines below the table. */
    public Playing noted(List<String> lines) {
        return new Playing(clock, marks, way.map(w -> w.noted(lines)));
    }

    /**
     * A corner of the path, in the gantry's frame.
     *
     * @param way along the path [m]
     */
    public record Corner(int number, double way, double x, double y) {}

    /**
     * What strays along the way, in even pieces.
     *
     * @param lanes drawn side by side on one scale
     * @param margin least of allowed over found, error of the tool and skew [1]; not a number where
     *     neither is limited
     * @param end end of the scale [m]
     */
    public record StrayCurve(List<Lane> lanes, double[] margin, double end) {
        public StrayCurve {
            lanes = List.copyOf(lanes);
        }
    }

    /**
     * One quantity with its sign.
     *
     * @param words one or two
     * @param low least in each piece [m]
     * @param high largest in each piece [m]
     * @param allowed size it may have; not a number where none is given [m]
     * @param now value now [m]
     */
    public record Lane(String words, double[] low, double[] high, double allowed, double now) {}

    /**
     * The track of the tool point, in the gantry's frame [m].
     *
     * @param x commanded
     * @param y commanded
     * @param errorX tool minus command
     * @param errorY tool minus command
     * @param z of the tool point
     * @param larger factor errors are drawn with
     * @param end error of the darkest ink
     * @param now row of these arrays that is nearest to now
     */
    public record Track(
            float[] x,
            float[] y,
            float[] errorX,
            float[] errorY,
            double z,
            double larger,
            double end,
            int now) {}
}
