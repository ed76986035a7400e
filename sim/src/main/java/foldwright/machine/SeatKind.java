// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

/** How a tool seat holds. */
public enum SeatKind {
    /** A clamp or screw. */
    CLAMPED,
    /** A wedge or taper. */
    WEDGED,
    /** Magnets. */
    MAGNETIC
}
