// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/** Places helper springs for a pose: their length follows their ends. Makes no objects. */
final class SpringMotion {
    /** A point on a body. */
    record End(int body, Vector3f at) {}

    /**
     * A spring between two ends.
     *
     * @param channel takes its length; the next one what {@code closing} says, where there is one
     * @param body stands at {@code from} and looks to {@code to}
     * @param rod stands at {@code to} and looks back, or -1
     * @param longest it does not reach further: free length of a touched coil, else infinite [m]
     * @param closing radius down to which the coils of a cone lie on one another, by length; null
     *     for others [m]
     */
    record Straight(
            int channel,
            int body,
            int rod,
            End from,
            End to,
            double longest,
            DoubleUnaryOperator closing) {}

    /**
     * The leg of a torsion spring that rests on what holds the pin.
     *
     * @param body of the leg, its x along the leg
     * @param arm that carries the coil
     * @param along place of the pin on the arm [m]
     * @param armSense whether the arm leaves the pin along its x (+1) or against it
     * @param holder other arm at the pin, or -1 for base and deck
     * @param holderSense direction of the leg at rest along the holder's or the world's x
     * @param free angle between the legs beyond which it lets go; infinite when fastened [rad]
     */
    record Leg(
            int body,
            int arm,
            double along,
            int armSense,
            int holder,
            int holderSense,
            double free) {}

    private final List<Straight> straight = new ArrayList<>();
    private final List<Leg> legs = new ArrayList<>();
    private final List<double[]> fixed = new ArrayList<>();
    private final Vector3f a = new Vector3f();
    private final Vector3f b = new Vector3f();
    private final Vector3f side = new Vector3f();
    private final Vector3f up = new Vector3f();
    private final Matrix4x3f turn = new Matrix4x3f();

    void add(Straight spring) {
        straight.add(spring);
    }

    void add(Leg leg) {
        legs.add(leg);
    }

    /** A channel that never changes [m]. */
    void fixed(int channel, double value) {
        fixed.add(new double[] {channel, value});
    }

    /** Writes where each spring stands and how long it is. */
    void place(Pose pose) {
        for (int i = 0; i < fixed.size(); i++) {
            pose.channel[(int) fixed.get(i)[0]] = fixed.get(i)[1];
        }
        for (int i = 0; i < straight.size(); i++) {
            place(straight.get(i), pose);
        }
        for (int i = 0; i < legs.size(); i++) {
            place(legs.get(i), pose);
        }
    }

    private void place(Straight s, Pose pose) {
        pose.body[s.from.body].transformPosition(s.from.at, a);
        pose.body[s.to.body].transformPosition(s.to.at, b);
        double length = Math.min(a.distance(b), s.longest);
        if (s.rod >= 0) {
            pose.body[s.rod].translation(b);
            turnZ(pose.body[s.rod], a.x - b.x, a.y - b.y, a.z - b.z);
        }
        pose.body[s.body].translation(a);
        turnZ(pose.body[s.body], b.x - a.x, b.y - a.y, b.z - a.z);
        pose.channel[s.channel] = length;
        if (s.closing != null) {
            pose.channel[s.channel + 1] = s.closing.applyAsDouble(length);
        }
    }

    private void turnZ(Matrix4x3f m, float x, float y, float z) {
        float n = (float) Math.sqrt(x * x + y * y + z * z);
        if (z > 0.9999f * n) {
            return;
        }
        up.set(x / n, y / n, z / n);
        if (Math.abs(up.z) < 0.9f) {
            side.set(0, 0, 1);
        } else {
            side.set(1, 0, 0);
        }
        side.cross(up).normalize();
        // z cross x completes the frame.
        float yx = up.y * side.z - up.z * side.y;
        float yy = up.z * side.x - up.x * side.z;
        float yz = up.x * side.y - up.y * side.x;
        turn.set(side.x, side.y, side.z, yx, yy, yz, up.x, up.y, up.z, 0, 0, 0);
        m.mul(turn);
    }

    private void place(Leg leg, Pose pose) {
        Matrix4x3f arm = pose.body[leg.arm];
        double from = angle(arm, leg.armSense);
        double rest =
                leg.holder >= 0
                        ? angle(pose.body[leg.holder], leg.holderSense)
                        : leg.holderSense > 0 ? 0 : Math.PI;
        double open = from - rest;
        open -= 2 * Math.PI * Math.rint(open / (2 * Math.PI));
        double held = Math.abs(open) > leg.free ? from - Math.signum(open) * leg.free : rest;
        arm.transformPosition(a.set((float) leg.along, 0, 0));
        pose.body[leg.body].translation(a).rotateY((float) -held);
    }

    /** Direction of a body's x axis upright in the plane of the machine [rad]. */
    private static double angle(Matrix4x3f m, int sense) {
        return Math.atan2(sense * m.m02(), sense * m.m00());
    }
}
