// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

/** A vector or point with three components; unit and frame are said where it is used. */
public record Vec3(double x, double y, double z) {
    public static final Vec3 ZERO = new Vec3(0, 0, 0);
    public static final Vec3 X = new Vec3(1, 0, 0);
    public static final Vec3 Y = new Vec3(0, 1, 0);
    public static final Vec3 Z = new Vec3(0, 0, 1);

    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** This vector scaled to length one; a vector without direction is refused. */
    public Vec3 unit() {
        double n = length();
        if (!(n > 0) || Double.isInfinite(n)) {
            throw new IllegalArgumentException(
                    "a direction needs a finite length above 0: " + this);
        }
        return times(1 / n);
    }

    /** Some unit vector square to this one, the same for the same input. */
    public Vec3 anySquare() {
        Vec3 u = unit();
        double ax = Math.abs(u.x);
        double ay = Math.abs(u.y);
        double az = Math.abs(u.z);
        Vec3 helper = ax <= ay && ax <= az ? X : ay <= az ? Y : Z;
        return helper.minus(u.times(u.dot(helper))).unit();
    }

    /** Whether every component is a finite number. */
    public boolean isFinite() {
        return Double.isFinite(x + y + z);
    }
}
