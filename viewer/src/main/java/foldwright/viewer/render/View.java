// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import org.joml.Matrix4f;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * A parallel projection: machine (X along the scissor, Y back, Z up [m]) to picture (x right, y
 * down [px]).
 *
 * <p>{@code x = x0 + s right.P}, {@code y = y0 - s up.P}. The cabinet view of the home position is
 * not orthographic: right and up are sheared so that X and Z stay true to scale; turning blends to
 * orthographic axes.
 */
public final class View {
    /**
     * Where the view stands: sheared home (1) to orthographic (0), turn about the upright and tilt
     * [rad].
     */
    public record Stance(double shear, double turn, double tilt, Plan plan) {
        /** Which sheared view is home. */
        public enum Plan {
            /** The machine from the front, depth drawn to the upper left. */
            CABINET,
            /** The gantry from above, height drawn to the back. */
            ABOVE
        }

        /** The home view. */
        public static Stance home() {
            return new Stance(1, CABINET_TURN, CABINET_TILT, Plan.CABINET);
        }

        /** The view from above. */
        public static Stance above() {
            return new Stance(1, 0, ABOVE_TILT, Plan.ABOVE);
        }

        /** The orthographic view nearest to this one, turned by these angles [rad]. */
        public Stance turned(double byTurn, double byTilt) {
            double tilted = Math.max(-0.05, Math.min(Math.PI / 2, tilt + byTilt));
            return new Stance(0, turn + byTurn, tilted, plan);
        }
    }

    /**
     * The home view is drawn from the drive's end, which lies at +x: depth goes to the upper right.
     */
    private static final double CABINET_X = -0.344;

    private static final double CABINET_Z = 0.235;
    private static final double ABOVE_Z = 0.30;
    private static final double CABINET_TURN = Math.atan(CABINET_X);
    private static final double CABINET_TILT =
            Math.atan(CABINET_Z / Math.sqrt(1 + CABINET_X * CABINET_X));
    private static final double ABOVE_TILT = Math.atan2(1, ABOVE_Z);

    public final double scale;
    public final double x0;
    public final double y0;

    /** Whether this is the view from above. */
    public final boolean above;

    private final Vector3d right = new Vector3d();
    private final Vector3d up = new Vector3d();
    private final Vector3d away = new Vector3d();

    /**
     * @param scale [px/m]
     * @param x0 picture x of the origin of the machine [px]
     * @param y0 picture y of the origin [px]
     */
    public View(Stance stance, double scale, double x0, double y0) {
        this.scale = scale;
        this.x0 = x0;
        this.y0 = y0;
        above = stance.plan == Stance.Plan.ABOVE;
        double st = Math.sin(stance.turn);
        double ct = Math.cos(stance.turn);
        double se = Math.sin(stance.tilt);
        double ce = Math.cos(stance.tilt);
        // Looking direction (from the eye) of the orthographic view, and its axes.
        Vector3d flatRight = new Vector3d(ct, -st, 0);
        Vector3d flatUp = new Vector3d(st * se, ct * se, ce);
        boolean cabinet = stance.plan == Stance.Plan.CABINET;
        Vector3d shearRight = cabinet ? new Vector3d(1, -CABINET_X, 0) : new Vector3d(1, 0, 0);
        Vector3d shearUp = cabinet ? new Vector3d(0, CABINET_Z, 1) : new Vector3d(0, 1, ABOVE_Z);
        double w = stance.shear * stance.shear * (3 - 2 * stance.shear);
        flatRight.lerp(shearRight, w, right);
        flatUp.lerp(shearUp, w, up);
        right.cross(up, away).negate().normalize();
    }

    /** Picture x of a point [px]. */
    public double x(double px, double py, double pz) {
        return x0 + scale * right.dot(px, py, pz);
    }

    /** Picture y of a point, from above [px]. */
    public double y(double px, double py, double pz) {
        return y0 - scale * up.dot(px, py, pz);
    }

    /** How far along the view a point lies, growing away from the eye [m]. */
    public double depth(double px, double py, double pz) {
        return away.dot(px, py, pz);
    }

    /** From the eye into the picture, length 1. */
    public Vector3dc away() {
        return away;
    }

    /**
     * To clip space of a picture of this size.
     *
     * @param reach depths from -reach to +reach are kept [m]
     * @return {@code out}
     */
    public Matrix4f matrix(double width, double height, double reach, Matrix4f out) {
        double kx = 2 * scale / width;
        double ky = 2 * scale / height;
        double kz = 1 / reach;
        return out.set(
                (float) (kx * right.x),
                (float) (ky * up.x),
                (float) (kz * away.x),
                0,
                (float) (kx * right.y),
                (float) (ky * up.y),
                (float) (kz * away.y),
                0,
                (float) (kx * right.z),
                (float) (ky * up.z),
                (float) (kz * away.z),
                0,
                (float) (2 * x0 / width - 1),
                (float) (1 - 2 * y0 / height),
                0,
                1);
    }
}
