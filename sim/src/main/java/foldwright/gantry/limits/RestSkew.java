// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

import foldwright.gantry.model.BridgeGuide;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Statics;

/**
 * Skew of a gantry that stands still, end to end, by cause.
 *
 * @param squareness from assembly: the yaw at which the rails hold the bridge [m]
 * @param tension from unequal pretension of the belts, play taken out [m]
 * @param play to each side within which no block resists [m]
 * @param settled where the bridge comes to rest with all of it [m]
 */
public record RestSkew(double squareness, double tension, double play, double settled) {

    /** Skew at rest at a place. */
    public static RestSkew at(GantryModel model, double x, double y) {
        BridgeGuide guide = model.bridgeGuide();
        double span = model.span();
        double closed =
                new Statics(model.closed(), Statics.Hold.FIELDS).settle(x, y, Load.NONE).endToEnd();
        double settled = new Statics(model, Statics.Hold.FIELDS).settle(x, y, Load.NONE).endToEnd();
        double square = guide.squareness() * span;
        return new RestSkew(square, closed - square, guide.freeYaw() * span, settled);
    }
}
