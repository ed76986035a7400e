// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/** A move with its time profile: a buffer that a {@link Planner} fills. */
public final class TimedMove {
    private Move move = new Move();
    private final SpeedProfile profile = new SpeedProfile();
    private final double[] point = new double[3];
    private final double[] tangent = new double[3];
    private final double[] curvature = new double[3];

    public Move move() {
        return move;
    }

    /** Takes a move and gives back the one held so far, to be filled anew. */
    Move exchange(Move other) {
        Move held = move;
        move = other;
        return held;
    }

    public SpeedProfile profile() {
        return profile;
    }

    /** Writes the state at a time since the start of this move [s]. */
    public void sample(double t, CourseSample out) {
        SpeedProfile p = profile;
        p.look(t);
        double s = p.seenWay();
        double v = p.seenSpeed();
        double a = p.seenAcceleration();
        out.line = move.line();
        if (move.straight()) {
            move.sample(s, v, a, out);
            return;
        }
        move.point(s, point);
        move.tangent(s, tangent);
        out.x = point[0];
        out.y = point[1];
        out.z = point[2];
        out.vx = v * tangent[0];
        out.vy = v * tangent[1];
        out.vz = v * tangent[2];
        move.curvature(s, curvature);
        out.ax = a * tangent[0] + v * v * curvature[0];
        out.ay = a * tangent[1] + v * v * curvature[1];
        out.az = a * tangent[2] + v * v * curvature[2];
    }
}
