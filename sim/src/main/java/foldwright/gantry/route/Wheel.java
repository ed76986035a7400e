// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.Objects;
import java.util.Optional;

/**
 * A wheel of a belt route.
 *
 * @param name as people call it
 * @param carrier body that holds the wheel's axle
 * @param x centre along the bridge [m, frame of the carrier]
 * @param y centre along the leg rails [m, frame of the carrier]
 * @param radius pitch radius at the pretension of the belt [m]
 * @param sense how it turns while the belt runs in list order
 * @param surface toothed, or plain (a smooth or flanged idler)
 * @param axle name of the axle it is fixed to when that axle carries torque (a motor's or a
 *     shaft's); empty for an idler on its own bearing
 * @param inertia of the wheel alone about its axle [kg m2]
 * @param drag bearing friction torque [N m]
 */
public record Wheel(
        String name,
        Carrier carrier,
        double x,
        double y,
        double radius,
        Sense sense,
        Surface surface,
        Optional<String> axle,
        double inertia,
        double drag)
        implements RoutePoint {

    /** What the belt meets. */
    public enum Surface {
        TOOTHED,
        PLAIN
    }

    public Wheel {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(carrier, "carrier");
        Objects.requireNonNull(sense, "sense");
        Objects.requireNonNull(surface, "surface");
        Objects.requireNonNull(axle, "axle");
        Finite.check(name, "x", x);
        Finite.check(name, "y", y);
        Finite.checkPositive(name, "radius", radius);
        Finite.checkNotNegative(name, "inertia", inertia);
        Finite.checkNotNegative(name, "drag", drag);
    }

    /** A plain idler without inertia or drag. */
    public static Wheel idler(
            String name, Carrier carrier, double x, double y, double radius, Sense sense) {
        return new Wheel(name, carrier, x, y, radius, sense, Surface.PLAIN, Optional.empty(), 0, 0);
    }

    /** A toothed wheel on an axle that carries torque. */
    public static Wheel driven(
            String name,
            Carrier carrier,
            double x,
            double y,
            double radius,
            Sense sense,
            String axle) {
        return new Wheel(
                name, carrier, x, y, radius, sense, Surface.TOOTHED, Optional.of(axle), 0, 0);
    }

    /** The same wheel elsewhere. */
    public Wheel at(double newX, double newY) {
        return new Wheel(name, carrier, newX, newY, radius, sense, surface, axle, inertia, drag);
    }

    /** The same wheel with another bearing. */
    public Wheel withBearing(double newInertia, double newDrag) {
        return new Wheel(name, carrier, x, y, radius, sense, surface, axle, newInertia, newDrag);
    }

    /** The same wheel passed by the belt the other way round. */
    public Wheel turning(Sense other) {
        return new Wheel(name, carrier, x, y, radius, other, surface, axle, inertia, drag);
    }

    /** The same wheel on another body. */
    public Wheel on(Carrier other) {
        return new Wheel(name, other, x, y, radius, sense, surface, axle, inertia, drag);
    }

    /** The same wheel with another surface. */
    public Wheel with(Surface other) {
        return new Wheel(name, carrier, x, y, radius, sense, other, axle, inertia, drag);
    }
}
