// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.spring.SpringLaw;

/**
 * What one helper spring gives at one pose.
 *
 * @param spring name of the spring, see {@link LiftNames#spring}
 * @param measure whether it acts along a length or around an angle
 * @param force pushes the ends apart where positive [N], or opens the legs [N·m]
 * @param extent length between its ends [m], or angle of its legs [rad]; where a touched spring has
 *     let go, of the room it would have
 * @param free length or angle at which it lets go [m or rad]
 * @param stress of its wire, corrected for curvature; not a number where the wire is not known [Pa]
 * @param allowedStress of its wire, not a number where not known [Pa]
 */
public record SpringLoad(
        String spring,
        SpringLaw.Measure measure,
        double force,
        double extent,
        double free,
        double stress,
        double allowedStress) {
    /** Whether it is beyond its free length or angle. */
    public boolean letGo() {
        return extent >= free;
    }

    /** Stress over the allowed one; not a number where either is not known [1]. */
    public double use() {
        return stress / allowedStress;
    }
}
