// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.Objects;

/**
 * The points on which toolpaths in use differ.
 *
 * @param dwellUnit unit of the P word of G4: seconds by NISTIR 6556 section 3.5.4, milliseconds by
 *     common practice of small machines (no source)
 * @param homing what G28 moves
 * @param fallbackFeed feed of a feed move that comes before any F word [m/s]
 * @param reach no coordinate may lie further from the origin [m]
 */
public record ReaderSettings(
        DwellUnit dwellUnit, Homing homing, double fallbackFeed, double reach) {
    /** Unit of the P word of G4. */
    public enum DwellUnit {
        SECONDS,
        MILLISECONDS
    }

    /** What G28 moves. */
    public enum Homing {
        /** Through the point given, then every axis to zero (NISTIR 6556, section 3.5.8). */
        ALL_AXES_BY_POINT,
        /**
         * Only the axes named go to zero, all where none is named (common practice of small
         * machines, no source).
         */
        NAMED_AXES
    }

    public ReaderSettings {
        Objects.requireNonNull(dwellUnit, "dwellUnit");
        Objects.requireNonNull(homing, "homing");
        if (!(fallbackFeed > 0)) {
            throw new IllegalArgumentException("fallbackFeed must be positive: " + fallbackFeed);
        }
        if (!(reach > 0)) {
            throw new IllegalArgumentException("reach must be positive: " + reach);
        }
    }

    /** As the published standard has it, with a reach of 10 m. */
    public static ReaderSettings standard() {
        return new ReaderSettings(DwellUnit.SECONDS, Homing.ALL_AXES_BY_POINT, 0.05, 10);
    }
}
