// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

import java.util.Locale;
import java.util.Objects;

/**
 * Mass, its centre and its inertia about that centre, all in the frame of the body.
 *
 * @param mass [kg], above 0
 * @param centre centre of mass [m, body frame]
 * @param inertia about the centre of mass [kg m2, body axes]
 */
public record MassProperties(double mass, Vec3 centre, Inertia inertia) {
    public MassProperties {
        Objects.requireNonNull(centre, "centre");
        Objects.requireNonNull(inertia, "inertia");
        if (!(mass > 0) || Double.isInfinite(mass) || !centre.isFinite()) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT, "mass must be finite and above 0 kg, found %s", mass));
        }
    }

    /** A mass without extent. */
    public static MassProperties point(double mass, Vec3 centre) {
        return new MassProperties(mass, centre, Inertia.ZERO);
    }

    /** Thin uniform rod from {@code a} to {@code b} [m, body frame]: m L2/12 across, 0 along. */
    public static MassProperties rod(double mass, Vec3 a, Vec3 b) {
        Vec3 half = b.minus(a).times(0.5);
        return new MassProperties(mass, a.plus(b).times(0.5), Inertia.ofPoint(mass / 3, half));
    }

    /** Uniform block with edges {@code size} [m] along the body axes. */
    public static MassProperties block(double mass, Vec3 centre, Vec3 size) {
        double k = mass / 12;
        double x = size.x() * size.x();
        double y = size.y() * size.y();
        double z = size.z() * size.z();
        return new MassProperties(
                mass, centre, Inertia.principal(k * (y + z), k * (x + z), k * (x + y)));
    }

    /** Uniform solid cylinder with its axis along {@code axis}. */
    public static MassProperties cylinder(
            double mass, Vec3 centre, Vec3 axis, double radius, double length) {
        double along = 0.5 * mass * radius * radius;
        double across = mass * (3 * radius * radius + length * length) / 12;
        Inertia own = Inertia.principal(across, across, along);
        return new MassProperties(mass, centre, own.turned(Rotation.frame(axis)));
    }

    /** Both masses as one rigid body. */
    public MassProperties plus(MassProperties o) {
        double m = mass + o.mass;
        Vec3 c = centre.times(mass / m).plus(o.centre.times(o.mass / m));
        Inertia j =
                inertia.plus(o.inertia)
                        .plus(Inertia.ofPoint(mass, centre.minus(c)))
                        .plus(Inertia.ofPoint(o.mass, o.centre.minus(c)));
        return new MassProperties(m, c, j);
    }
}
