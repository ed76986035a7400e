// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/** A move with its time profile: a buffer that a {@link Planner} fills. */
public final class TimedMove {
    private final Move move = new Move();
    private final SpeedProfile profile = new SpeedProfile();
    private final double[] state = new double[3];
    private final double[] point = new double[3];
    private final double[] tangent = new double[3];
    private final double[] curvature = new double[3];

    public Move move() {
        return move;
    }

    public SpeedProfile profile() {
        return profile;
    }

    /** Writes the state at a time since the start of this move [s]. */
    public void sample(double t, CourseSample out) {
        profile.state(t, state);
        double s = state[0];
        double v = state[1];
        double a = state[2];
        move.point(s, point);
        move.tangent(s, tangent);
        out.x = point[0];
        out.y = point[1];
        out.z = point[2];
        out.vx = v * tangent[0];
        out.vy = v * tangent[1];
        out.vz = v * tangent[2];
        out.line = move.line();
        if (move.straight()) {
            out.ax = a * tangent[0];
            out.ay = a * tangent[1];
            out.az = a * tangent[2];
            return;
        }
        move.curvature(s, curvature);
        out.ax = a * tangent[0] + v * v * curvature[0];
        out.ay = a * tangent[1] + v * v * curvature[1];
        out.az = a * tangent[2] + v * v * curvature[2];
    }
}
