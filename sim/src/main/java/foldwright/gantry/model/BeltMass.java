// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.RouteCheck;

/**
 * What the belts of a machine weigh in its motion, idlers left out.
 *
 * @param alongBridge that moves as if it were on the carriage [kg]
 * @param alongRails that moves as if it were on the bridge [kg]
 * @param racking part of the first that the ends of the bridge feel; the rest turns with the motors
 *     [kg]
 */
public record BeltMass(double alongBridge, double alongRails, double racking) {

    /** Of a machine, at the middle of its travel. */
    public static BeltMass of(GantryModel model) {
        GantryModel belts = model.weightlessIdlers();
        BeltSystem system = new BeltSystem(belts.layout(), belts.idlers());
        RidingLoad riding = RidingLoad.of(belts, system, RouteCheck.relation(system));
        return new BeltMass(riding.totalX(), riding.totalY(), riding.massX());
    }
}
