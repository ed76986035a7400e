// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import foldwright.elements.Domain;

/**
 * Gas compression spring.
 *
 * @param extendedLength length between the end joints, fully out [m]
 * @param stroke travel of the rod [m]
 * @param extendedForce F1, push at full extension while moving slowly in, seal friction left out
 *     [N]
 * @param slowRise F2/F1 at full stroke measured slowly (gas at wall temperature), 1.2 to 1.6 as a
 *     rule [1]
 * @param exponent n of the change of state: 1 slow, 1.4 fast (nitrogen) [1]
 * @param sealFriction force against motion in either direction [N]
 */
public record GasSpring(
        double extendedLength,
        double stroke,
        double extendedForce,
        double slowRise,
        double exponent,
        double sealFriction) {

    public GasSpring {
        Domain.positive("extended length", extendedLength, "m");
        Domain.positive("stroke", stroke, "m");
        Domain.positive("force at full extension", extendedForce, "N");
        Domain.within("slow force rise", slowRise, 1, 10, "1");
        Domain.within("gas exponent", exponent, 1, 1.67, "1");
        Domain.notNegative("seal friction", sealFriction, "N");
        if (!(stroke < extendedLength)) {
            throw new IllegalArgumentException(
                    "stroke is "
                            + stroke
                            + " m, allowed: below the extended length, "
                            + extendedLength
                            + " m");
        }
    }

    /** c = 1 - F1/F2, share of the gas volume that the rod takes at full stroke [1]. */
    public double volumeShare() {
        return 1 - 1 / slowRise;
    }

    /** Force over length without seal friction. */
    public GasLaw law(Attachment attachment) {
        return new GasLaw(this, attachment);
    }
}
