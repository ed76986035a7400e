// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.column.CriticalLoad;
import foldwright.elements.column.EndFixity;
import foldwright.elements.column.RoundColumn;
import foldwright.elements.column.Whirl;
import foldwright.machine.drive.Screw;
import foldwright.machine.drive.ScrewEnds;

/**
 * What a screw bears before it bends aside: compression between bearing and nut, and turning.
 *
 * @param screw its description; the root diameter counts
 */
public record ScrewStrength(Screw screw) {
    /** Yield strength of a screw whose material states none: plain structural steel [Pa]. */
    public static final double USUAL_YIELD = 250e6;

    /** How its ends are held, the nut counting as one. */
    public EndFixity ends() {
        return fixity(screw.ends());
    }

    /** Yield strength of its material, or that of plain steel [Pa]. */
    public double yieldStrength() {
        return screw.material().strength().orElse(USUAL_YIELD);
    }

    /**
     * Compression at which it buckles, with the end constant that is recommended for design.
     *
     * @param freeLength from bearing to nut [m]
     */
    public CriticalLoad buckling(double freeLength) {
        return new RoundColumn(
                        screw.thread().rootDiameter(),
                        freeLength,
                        screw.material().youngsModulus(),
                        yieldStrength())
                .criticalLoad(ends().recommended());
    }

    /** Speed at which the whole length whirls without load [rad/s]. */
    public double whirlSpeed() {
        return new Whirl(
                        screw.thread().rootDiameter(),
                        screw.length(),
                        screw.material().youngsModulus(),
                        screw.material().density())
                .criticalSpeed(ends());
    }

    private static EndFixity fixity(ScrewEnds ends) {
        return switch (ends) {
            case FIXED_FREE -> EndFixity.FIXED_FREE;
            case FIXED_SUPPORTED -> EndFixity.FIXED_PINNED;
            case SUPPORTED_SUPPORTED -> EndFixity.PINNED_PINNED;
            case FIXED_FIXED -> EndFixity.FIXED_FIXED;
        };
    }
}
