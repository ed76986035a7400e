// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.List;
import java.util.Objects;

/**
 * A belt and its way through the machine.
 *
 * <p>A route starts and ends at an anchor, or it is a closed loop and holds wheels only. Belts that
 * lie at the same level share a plane: there no strand may cross another strand or a wheel.
 *
 * @param name as people call it
 * @param points in the order in which the belt meets them
 * @param pitch of the teeth [m]
 * @param width [m]
 * @param stiffness force per unit strain, EA [N]
 * @param linearMass [kg/m]
 * @param pretension at rest, machine in the middle of its travel [N]
 * @param level height of the belt's middle line above the plane of the leg rails [m]
 */
public record Belt(
        String name,
        List<RoutePoint> points,
        double pitch,
        double width,
        double stiffness,
        double linearMass,
        double pretension,
        double level) {

    public Belt {
        Objects.requireNonNull(name, "name");
        points = List.copyOf(points);
        Finite.checkPositive(name, "pitch", pitch);
        Finite.checkPositive(name, "width", width);
        Finite.checkPositive(name, "stiffness", stiffness);
        Finite.checkNotNegative(name, "linear mass", linearMass);
        Finite.checkNotNegative(name, "pretension", pretension);
        Finite.check(name, "level", level);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "belt \"" + name + "\" has " + points.size() + " points; allowed: 2 or more");
        }
    }

    /** Whether the belt is a loop without clamps. */
    public boolean closed() {
        return points.get(0) instanceof Wheel;
    }

    /** Number of strands between neighbours of the list. */
    public int spans() {
        return closed() ? points.size() : points.size() - 1;
    }

    /** The same belt on another way. */
    public Belt through(List<RoutePoint> other) {
        return new Belt(name, other, pitch, width, stiffness, linearMass, pretension, level);
    }

    /** The same belt pulled tighter or slacker [N]. */
    public Belt withPretension(double force) {
        return new Belt(name, points, pitch, width, stiffness, linearMass, force, level);
    }

    /** The same belt with another mass of a length [kg/m]; 0 for one that weighs nothing. */
    public Belt withLinearMass(double mass) {
        return new Belt(name, points, pitch, width, stiffness, mass, pretension, level);
    }

    /** The same belt with another force per unit strain [N]. */
    public Belt withStiffness(double force) {
        return new Belt(name, points, pitch, width, force, linearMass, pretension, level);
    }
}
