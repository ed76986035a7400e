// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.abs;
import static java.lang.Math.min;

/**
 * Times moves with look-ahead over a window that slides along the toolpath, exactly as if the whole
 * toolpath were known. Backwards through the window two bounds of every corner speed are carried:
 * one that stops at the window's end and one that leaves it at any speed. Where they agree, nothing
 * behind the window can change the speed, so everything before is final. The window grows only when
 * they agree nowhere.
 *
 * <p>An arc is passed at most at sqrt(a R); along it the tangential acceleration may reach the
 * limit as well, so the resultant can be up to sqrt(2) times the limit. The jerk of turning into an
 * arc is not limited.
 */
public final class Planner {
    private static final int FIRST_WINDOW = 1024;
    private static final int LARGEST_WINDOW = 1 << 17;

    private final MoveSource source;
    private final MotionLimits limits;
    private final MotionLimits.AxisLimits[] axes;
    private final double deviation;

    // Ring of moves that are read and not yet handed out; corner i is the start of move i.
    private Move[] moves = new Move[0];
    private double[] top = new double[0];
    private double[] acceleration = new double[0];
    private double[] jerk = new double[0];
    private double[] cornerLimit = new double[0];
    private double[] stopping = new double[0];
    private int head;
    private int count;
    private int ready;
    private boolean exhausted;
    private double startSpeed;
    private long shortened;

    private final double[] endTangent = new double[3];
    private final double[] startTangent = new double[3];
    private double previousTop;
    private double previousAcceleration;

    public Planner(MoveSource source, MotionLimits limits) {
        this.source = source;
        this.limits = limits;
        axes = limits.axes().toArray(new MotionLimits.AxisLimits[0]);
        this.deviation =
                limits.corners() instanceof MotionLimits.Rounded rounded ? rounded.deviation() : 0;
        grow(FIRST_WINDOW);
    }

    /**
     * Hands out the next move with its time profile.
     *
     * @return false at the end
     * @throws ToolpathException where the toolpath cannot be read on
     */
    public boolean next(TimedMove out) throws ToolpathException {
        while (ready == 0) {
            fill();
            if (count == 0) {
                return false;
            }
            lookBack();
            if (ready == 0) {
                if (moves.length < LARGEST_WINDOW) {
                    grow(2 * moves.length);
                } else {
                    ready = count / 2;
                    shortened++;
                }
            }
        }
        handOut(out);
        return true;
    }

    /**
     * How often the largest window was too short, so that a speed was set lower than needed; 0 on
     * real toolpaths.
     */
    public long shortened() {
        return shortened;
    }

    private void handOut(TimedMove out) {
        int i = head;
        Move move = moves[i];
        moves[i] = out.exchange(move);
        if (move.kind() == Move.Kind.PAUSE) {
            out.profile().planPause(move.pause());
            startSpeed = 0;
        } else {
            double endLimit = count > 1 ? stopping[next(i)] : 0;
            double end = Ramp.within(startSpeed, endLimit, move.length(), acceleration[i], jerk[i]);
            out.profile().plan(move.length(), startSpeed, end, top[i], acceleration[i], jerk[i]);
            startSpeed = end;
        }
        head = next(i);
        count--;
        ready--;
    }

    private void fill() throws ToolpathException {
        while (!exhausted && count < moves.length) {
            int i = index(count);
            if (!source.next(moves[i])) {
                exhausted = true;
                return;
            }
            if (moves[i].kind() != Move.Kind.PAUSE && moves[i].length() == 0) {
                continue;
            }
            setLimits(i);
            count++;
        }
    }

    private void setLimits(int i) {
        Move move = moves[i];
        if (move.kind() == Move.Kind.PAUSE) {
            top[i] = 0;
            acceleration[i] = 1;
            jerk[i] = 1;
            cornerLimit[i] = 0;
            previousTop = 0;
            return;
        }
        axisLimits(i, move);
        move.tangent(0, startTangent);
        double cosine =
                startTangent[0] * endTangent[0]
                        + startTangent[1] * endTangent[1]
                        + startTangent[2] * endTangent[2];
        double through = min(previousTop, top[i]);
        if (through > 0) {
            double a = min(previousAcceleration, acceleration[i]);
            // Nearly straight (rounding of tangents): no corner.
            through =
                    cosine > 1 - 1e-12
                            ? through
                            : min(through, CornerSpeed.of(cosine, deviation, a));
        }
        cornerLimit[i] = through;
        previousTop = top[i];
        previousAcceleration = acceleration[i];
        move.tangent(move.length(), endTangent);
    }

    private void axisLimits(int i, Move move) {
        double v = limits.path().speed();
        double a = min(move.acceleration(), limits.path().acceleration());
        double j = limits.path().jerk();
        boolean arc = move.kind() == Move.Kind.ARC;
        for (int axis = 0; axis < 3; axis++) {
            double share = arc ? arcShare(move, axis) : abs(move.direction(axis));
            // Products first: a division only where an axis holds the path back.
            MotionLimits.AxisLimits limit = axes[axis];
            v = v * share > limit.speed() ? limit.speed() / share : v;
            a = a * share > limit.acceleration() ? limit.acceleration() / share : a;
            j = j * share > limit.jerk() ? limit.jerk() / share : j;
        }
        if (move.rate() == Move.Rate.FEED) {
            v = min(v, move.feed());
        }
        if (arc) {
            v = min(v, Math.sqrt(a * move.radius()));
        }
        top[i] = v;
        acceleration[i] = a;
        jerk[i] = limits.ramps() == MotionLimits.Ramps.JERK_LIMITED ? j : Double.POSITIVE_INFINITY;
    }

    /** An arc may point along either axis of its plane. */
    private static double arcShare(Move move, int axis) {
        return axis == move.arcAxis(2) ? abs(move.end(axis) - move.start(axis)) / move.length() : 1;
    }

    /**
     * Carries both bounds backwards and counts how many moves from the head have final end speeds.
     */
    private void lookBack() {
        double low = 0;
        double high = exhausted ? 0 : Double.POSITIVE_INFINITY;
        int last = -1;
        for (int k = count - 1; k >= 0; k--) {
            int i = index(k);
            boolean same = low == high;
            if (same && last < 0) {
                last = k;
            }
            double limit = cornerLimit[i];
            double length = moves[i].length();
            low = Ramp.within(low, limit, length, acceleration[i], jerk[i]);
            high = same ? low : Ramp.within(high, limit, length, acceleration[i], jerk[i]);
            stopping[i] = low;
        }
        ready = last + 1;
    }

    private int index(int k) {
        int i = head + k;
        return i >= moves.length ? i - moves.length : i;
    }

    private int next(int i) {
        return i + 1 == moves.length ? 0 : i + 1;
    }

    private void grow(int size) {
        Move[] newMoves = new Move[size];
        double[][] old = {top, acceleration, jerk, cornerLimit, stopping};
        double[][] wide = new double[old.length][size];
        for (int k = 0; k < moves.length; k++) {
            int i = index(k);
            newMoves[k] = moves[i];
            for (int f = 0; f < old.length; f++) {
                wide[f][k] = old[f][i];
            }
        }
        for (int k = moves.length; k < size; k++) {
            newMoves[k] = new Move();
        }
        moves = newMoves;
        top = wide[0];
        acceleration = wide[1];
        jerk = wide[2];
        cornerLimit = wide[3];
        stopping = wide[4];
        head = 0;
    }
}
