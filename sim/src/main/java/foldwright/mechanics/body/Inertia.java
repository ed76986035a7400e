// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

import java.util.Locale;

/**
 * Inertia tensor about the centre of mass, in the axes of the body's frame [kg m2]; off-diagonal
 * entries are those of the tensor (minus the products of inertia).
 */
public record Inertia(double xx, double yy, double zz, double xy, double xz, double yz) {
    public static final Inertia ZERO = new Inertia(0, 0, 0, 0, 0, 0);

    public Inertia {
        if (!Double.isFinite(xx + yy + zz + xy + xz + yz) || xx < 0 || yy < 0 || zz < 0) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "moments of inertia must be finite and not below 0: %s, %s, %s",
                            xx,
                            yy,
                            zz));
        }
    }

    /** Tensor with the body axes as principal axes. */
    public static Inertia principal(double xx, double yy, double zz) {
        return new Inertia(xx, yy, zz, 0, 0, 0);
    }

    public Inertia plus(Inertia o) {
        return new Inertia(xx + o.xx, yy + o.yy, zz + o.zz, xy + o.xy, xz + o.xz, yz + o.yz);
    }

    /** Tensor of a point mass [kg] at {@code r} [m] (parallel-axis theorem, Steiner's term). */
    public static Inertia ofPoint(double mass, Vec3 r) {
        double x = r.x();
        double y = r.y();
        double z = r.z();
        return new Inertia(
                mass * (y * y + z * z),
                mass * (x * x + z * z),
                mass * (x * x + y * y),
                -mass * x * y,
                -mass * x * z,
                -mass * y * z);
    }

    /** Tensor, in the same axes, of the body after it was turned by {@code turn}. */
    public Inertia turned(Rotation turn) {
        Vec3 a = turn.inverse().apply(Vec3.X);
        Vec3 b = turn.inverse().apply(Vec3.Y);
        Vec3 c = turn.inverse().apply(Vec3.Z);
        return new Inertia(
                product(a, a),
                product(b, b),
                product(c, c),
                product(a, b),
                product(a, c),
                product(b, c));
    }

    private double product(Vec3 u, Vec3 v) {
        return u.dot(apply(v));
    }

    /** Angular momentum [kg m2/s] at angular velocity {@code w} [rad/s]. */
    public Vec3 apply(Vec3 w) {
        return new Vec3(
                xx * w.x() + xy * w.y() + xz * w.z(),
                xy * w.x() + yy * w.y() + yz * w.z(),
                xz * w.x() + yz * w.y() + zz * w.z());
    }

    /** Smallest principal moment [kg m2]. */
    public double smallest() {
        return Principal.smallest(this);
    }

    /** Moment of a direction that the tensor resists least; closed form of the cubic. */
    private static final class Principal {
        static double smallest(Inertia j) {
            double mean = (j.xx + j.yy + j.zz) / 3;
            double a = j.xx - mean;
            double b = j.yy - mean;
            double c = j.zz - mean;
            double off = j.xy * j.xy + j.xz * j.xz + j.yz * j.yz;
            double p = Math.sqrt((a * a + b * b + c * c + 2 * off) / 6);
            if (p == 0) {
                return mean;
            }
            double det =
                    a * (b * c - j.yz * j.yz)
                            - j.xy * (j.xy * c - j.yz * j.xz)
                            + j.xz * (j.xy * j.yz - b * j.xz);
            double cos = Math.max(-1, Math.min(1, det / (2 * p * p * p)));
            return mean + 2 * p * Math.cos(Math.acos(cos) / 3 + 2 * Math.PI / 3);
        }
    }
}
