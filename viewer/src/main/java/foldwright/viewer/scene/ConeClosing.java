// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.elements.spring.ConicalSpring;
import foldwright.lift.SpringLaws;
import foldwright.machine.spring.ConicalCoil;

/**
 * How far a cone has closed at a length: its largest coils lie on one another first. Coils give
 * with the cube of their radius, so the radius at which they just touch says how every other coil
 * stands; before any touches it is larger than the largest coil.
 */
final class ConeClosing {
    private static final int HALVINGS = 40;

    private final ConicalSpring spring;
    private final double touch;
    private final double most;
    private final double free;

    ConeClosing(ConicalCoil c) {
        spring = SpringLaws.conical(c);
        touch = spring.touchForce();
        most = spring.closingForce();
        free = c.freeLength();
    }

    /** Radius of the coil that just touches at a length of the spring [m]. */
    double radius(double length) {
        double squeeze = free - length;
        double low = 0;
        double high = most;
        for (int i = 0; i < HALVINGS; i++) {
            double mid = 0.5 * (low + high);
            if (spring.deflection(mid) < squeeze) {
                low = mid;
            } else {
                high = mid;
            }
        }
        if (high > touch) {
            return spring.largestFreeDiameter(high) / 2;
        }
        double share = Math.max(1e-6, high / touch);
        return spring.largeDiameter() / 2 / Math.cbrt(share);
    }
}
