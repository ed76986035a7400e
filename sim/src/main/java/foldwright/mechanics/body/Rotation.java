// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

/** A rotation as a unit quaternion (scalar part first); constructors bring it to length one. */
public record Rotation(double w, double x, double y, double z) {
    public static final Rotation NONE = new Rotation(1, 0, 0, 0);

    public Rotation {
        double n = Math.sqrt(w * w + x * x + y * y + z * z);
        if (!(n > 0) || Double.isInfinite(n)) {
            throw new IllegalArgumentException("a rotation needs a finite quaternion other than 0");
        }
        w /= n;
        x /= n;
        y /= n;
        z /= n;
    }

    /** Turn by {@code angle} [rad] about {@code axis}, right-handed. */
    public static Rotation about(Vec3 axis, double angle) {
        Vec3 u = axis.unit().times(Math.sin(0.5 * angle));
        return new Rotation(Math.cos(0.5 * angle), u.x(), u.y(), u.z());
    }

    /**
     * The frame whose z axis is {@code z} and whose x axis lies in the plane of {@code z} and
     * {@code x}.
     */
    public static Rotation frame(Vec3 z, Vec3 x) {
        Vec3 ez = z.unit();
        Vec3 ey = ez.cross(x).unit();
        return ofAxes(ey.cross(ez), ey, ez);
    }

    /** The frame whose z axis is {@code z}; the other two are chosen, always in the same way. */
    public static Rotation frame(Vec3 z) {
        return frame(z, z.anySquare());
    }

    /** The frame with the three given right-handed square unit axes. */
    static Rotation ofAxes(Vec3 a, Vec3 b, Vec3 c) {
        double[] d = {
            1 + a.x() + b.y() + c.z(),
            1 + a.x() - b.y() - c.z(),
            1 - a.x() + b.y() - c.z(),
            1 - a.x() - b.y() + c.z()
        };
        int k = 0;
        for (int i = 1; i < 4; i++) {
            k = d[i] > d[k] ? i : k;
        }
        return switch (k) {
            case 0 -> new Rotation(d[0], b.z() - c.y(), c.x() - a.z(), a.y() - b.x());
            case 1 -> new Rotation(b.z() - c.y(), d[1], a.y() + b.x(), c.x() + a.z());
            case 2 -> new Rotation(c.x() - a.z(), a.y() + b.x(), d[2], b.z() + c.y());
            default -> new Rotation(a.y() - b.x(), c.x() + a.z(), b.z() + c.y(), d[3]);
        };
    }

    /** First {@code o}, then this. */
    public Rotation times(Rotation o) {
        return new Rotation(
                w * o.w - x * o.x - y * o.y - z * o.z,
                w * o.x + x * o.w + y * o.z - z * o.y,
                w * o.y - x * o.z + y * o.w + z * o.x,
                w * o.z + x * o.y - y * o.x + z * o.w);
    }

    public Rotation inverse() {
        return new Rotation(w, -x, -y, -z);
    }

    public Vec3 apply(Vec3 p) {
        Vec3 u = new Vec3(x, y, z);
        Vec3 t = u.cross(p).times(2);
        return p.plus(t.times(w)).plus(u.cross(t));
    }
}
