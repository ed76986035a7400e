// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.screw;

import foldwright.elements.Domain;

/**
 * The thrust bearing or shoulder that takes the axial load of a screw.
 *
 * @param friction coefficient at the mean diameter [1]; 0.001 to 0.0015 for a ball thrust bearing
 *     referred to its bore, 0.06 to 0.17 for a plain shoulder (Shigley 9th ed. Table 8-6)
 * @param meanDiameter diameter at which the friction acts [m]
 */
public record Collar(double friction, double meanDiameter) {
    /** No collar friction at all. */
    public static final Collar NONE = new Collar(0, 0);

    public Collar {
        Domain.notNegative("collar friction", friction, "1");
        Domain.notNegative("collar mean diameter", meanDiameter, "m");
    }

    /**
     * Friction torque F f_c d_c / 2, always against the motion [N·m].
     *
     * @param force axial load of either sign [N]
     */
    public double torque(double force) {
        return Math.abs(force) * friction * meanDiameter / 2;
    }
}
