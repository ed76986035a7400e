// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.route.Travel;

/**
 * How a toolpath is replayed.
 *
 * @param step largest time step; halved where the machine is too stiff for it [s]
 * @param originX place of the carriage origin when the course says x = 0 [m]
 * @param originY place of the bridge when the course says y = 0 [m]
 * @param tail time to go on after the last command, to see what rings on [s]
 */
public record ReplaySettings(double step, double originX, double originY, double tail) {
    /** Step that resolves the modes of small belt gantries [s]. */
    public static final double USUAL_STEP = 1e-4;

    public ReplaySettings {
        if (!(step > 0) || !(tail >= 0)) {
            throw new IllegalArgumentException(
                    "step "
                            + step
                            + " s, tail "
                            + tail
                            + " s; allowed: step above 0, tail 0 or more");
        }
    }

    /** Course zero at the lower corner of the travel. */
    public static ReplaySettings usual(Travel travel) {
        return new ReplaySettings(USUAL_STEP, travel.xMin(), travel.yMin(), 0.2);
    }

    public ReplaySettings withStep(double other) {
        return new ReplaySettings(other, originX, originY, tail);
    }
}
