// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.belt;

import foldwright.elements.Domain;

/**
 * A carriage between the two spans of one pretensioned belt loop, the motor pulling by span 1.
 *
 * <p>Span 2 reaches back to the motor over the idler, so its length is the total minus span 1.
 * Belts only pull: past the force at which span 2 goes slack, span 1 carries alone.
 *
 * @param stretchStiffness EA [N]
 * @param pullingLength L1 [m]
 * @param returnLength L2 [m]
 * @param pretension T0 [N]
 */
public record TwoSpanDrive(
        double stretchStiffness, double pullingLength, double returnLength, double pretension) {

    /** Tension of both spans. */
    public record Tensions(double tight, double slack) {}

    public TwoSpanDrive {
        Domain.positive("belt stiffness EA", stretchStiffness, "N");
        Domain.positive("pulling span", pullingLength, "m");
        Domain.positive("return span", returnLength, "m");
        Domain.notNegative("pretension", pretension, "N");
    }

    /** k1 = EA/L1 [N/m]. */
    public double pullingStiffness() {
        return stretchStiffness / pullingLength;
    }

    /** k2 = EA/L2 [N/m]. */
    public double returnStiffness() {
        return stretchStiffness / returnLength;
    }

    /** k = k1 + k2 while both spans pull [N/m]. */
    public double stiffness() {
        return pullingStiffness() + returnStiffness();
    }

    /** Largest drive force with span 2 still pulling, T0 k/k2 [N]. */
    public double slackForce() {
        return pretension * stiffness() / returnStiffness();
    }

    /** Tensions under a drive force: T0 + F k1/k and T0 - F k2/k, or F and 0 past slack [N]. */
    public Tensions tensions(double force) {
        if (force >= slackForce()) {
            return new Tensions(force, 0);
        }
        double k = stiffness();
        return new Tensions(
                pretension + force * pullingStiffness() / k,
                pretension - force * returnStiffness() / k);
    }

    /** Move of the carriage against the held motor under a drive force [m]. */
    public double deflection(double force) {
        double knee = slackForce();
        return force <= knee
                ? force / stiffness()
                : knee / stiffness() + (force - knee) / pullingStiffness();
    }

    /**
     * Pretension that leaves the slack span {@code share} of the drive force, F (k2/k + share) [N];
     * 0.1 to 0.3 is advised (Machine Design, 7 June 2001, Tension in timing-belt drives).
     */
    public double pretensionFor(double force, double share) {
        return force * (returnStiffness() / stiffness() + share);
    }
}
