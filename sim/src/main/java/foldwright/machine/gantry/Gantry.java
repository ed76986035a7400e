// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.List;

/**
 * The gantry. Its frame: x along the bridge, y along the two rails, z up; x = 0 is midway between
 * the rails.
 *
 * @param stand where it stands
 * @param legs the two rails the bridge runs on
 * @param bridge the cross member with the rail of the carriage
 * @param carriage what carries the tool
 * @param belts the belts and their routes
 * @param motors the motors
 * @param moves motion it is asked for
 */
@Kind(
        "The gantry. Its frame: x along the bridge, y along the two rails, z up; x = 0 is midway between the rails.")
public record Gantry(
        @Key("Where it stands") Stand stand,
        @Key("The two rails the bridge runs on") Legs legs,
        @Key("The cross member with the rail of the carriage") Bridge bridge,
        @Key("What carries the tool") Carriage carriage,
        @Key(value = "The belts and their routes", range = "[1, 8]") List<BeltRoute> belts,
        @Key(value = "The motors", range = "[1, 8]") List<GantryMotor> motors,
        @Key("Motion it is asked for") Moves moves) {
    /** Checks every value against its key and copies the lists. */
    public Gantry {
        Keys.check(Gantry.class, stand, legs, bridge, carriage, belts, motors, moves);
        belts = List.copyOf(belts);
        motors = List.copyOf(motors);
    }

    /** Mass that moves along the rails: bridge with carriage [kg]. */
    public double movingMass() {
        return bridge.mass() + carriage.mass();
    }
}
