// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

/** How the two ends of a screw are held. */
public enum ScrewEnds {
    /** One clamped, one free. */
    FIXED_FREE,
    /** One clamped, one in a bearing. */
    FIXED_SUPPORTED,
    /** Both in bearings. */
    SUPPORTED_SUPPORTED,
    /** Both clamped. */
    FIXED_FIXED
}
