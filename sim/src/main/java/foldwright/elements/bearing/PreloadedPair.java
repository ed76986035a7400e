// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.Domain;

/**
 * Two equal angular-contact bearings pressed together by a preload: each side gives F = K
 * delta^1.5, so the pair is stiff until the rear side lets go.
 *
 * @param single one of the two bearings
 * @param preload F0 [N]
 */
public record PreloadedPair(BallGeometry single, double preload) {
    private static final int ROUNDS = 60;

    public PreloadedPair {
        Domain.positive("preload", preload, "N");
        Domain.positive("contact angle", single.contactAngle(), "rad");
    }

    /** d0, axial approach of each bearing under the preload alone [m]. */
    public double preloadDeflection() {
        return single.axialDeflection(preload);
    }

    /** Axial stiffness without external load, 3 F0/d0 [N/m]. */
    public double stiffness() {
        return 3 * preload / preloadDeflection();
    }

    /** External load at which the rear bearing carries nothing, 2^1.5 F0 [N]. */
    public double unloadingForce() {
        return Math.pow(2, 1.5) * preload;
    }

    /**
     * Axial displacement x under an external load, from K[(d0+x)^1.5 - (d0-x)^1.5] = F_a [m].
     *
     * @param force external load of either sign [N]
     */
    public double displacement(double force) {
        double d0 = preloadDeflection();
        double k = preload / Math.pow(d0, 1.5);
        double load = Math.abs(force);
        if (load >= unloadingForce()) {
            return Math.copySign(Math.pow(load / k, 2.0 / 3) - d0, force);
        }
        // the sum is almost straight, so Newton from the starting stiffness needs few rounds
        double x = load / (3 * preload / d0);
        for (int i = 0; i < ROUNDS; i++) {
            double front = Math.sqrt(d0 + x);
            double rear = Math.sqrt(Math.max(0, d0 - x));
            double rest = k * (front * front * front - rear * rear * rear) - load;
            double step = rest / (1.5 * k * (front + rear));
            x -= step;
            if (Math.abs(step) <= 1e-15 * d0) {
                break;
            }
        }
        return Math.copySign(x, force);
    }
}
