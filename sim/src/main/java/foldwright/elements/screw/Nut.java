// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.screw;

import foldwright.elements.Domain;

/**
 * The nut on a thread, for the pressure on its flanks.
 *
 * @param thread the thread it runs on
 * @param length engaged length along the axis [m]
 * @param contactDepth radial depth over which the flanks touch [m]; P/2 for ISO trapezoidal
 */
public record Nut(ScrewThread thread, double length, double contactDepth) {
    public Nut {
        Domain.positive("nut length", length, "m");
        Domain.positive("contact depth", contactDepth, "m");
    }

    /** A nut of the given engaged length [m] with the contact depth P/2 of ISO 2904 threads. */
    public static Nut of(ScrewThread thread, double length) {
        return new Nut(thread, length, thread.pitch() / 2);
    }

    /**
     * Mean flank pressure F P/(pi d2 H1 L), the load spread evenly over all engaged turns [Pa].
     *
     * <p>Projected area; Muhs et al., <i>Roloff/Matek Maschinenelemente</i>, power-screw chapter,
     * from memory. The first turn carries about 0.38 of the load in a stiff nut (Shigley 9th ed. p.
     * 419), see {@link ThreadStress}.
     *
     * @param force size of the axial load [N]
     */
    public double pressure(double force) {
        return force * thread.pitch() / (Math.PI * thread.pitchDiameter() * contactDepth * length);
    }

    /** Sliding speed along the helix at the pitch diameter [m/s], for pv limits of the nut. */
    public double slidingSpeed(double screwSpeed) {
        double roll = Math.abs(screwSpeed) * thread.pitchDiameter() / 2;
        return roll / Math.cos(thread.leadAngle());
    }
}
