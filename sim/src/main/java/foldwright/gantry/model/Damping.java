// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Damping in proportion to stiffness: force = stiffness times (extension + time x speed). At
 * frequency f the damping ratio is pi f time.
 *
 * @param belt [s]
 * @param guide of blocks and beam [s]
 */
public record Damping(double belt, double guide) {
    /**
     * Common practice, no source: ratios near 0.02 at the 60 Hz of a belt mode and at the 200 Hz of
     * a guide mode.
     */
    public static final Damping USUAL = new Damping(1.0e-4, 3.0e-5);

    /** No damping at all. */
    public static final Damping NONE = new Damping(0, 0);

    public Damping {
        Checks.notNegative("belt damping time", belt);
        Checks.notNegative("guide damping time", guide);
    }
}
