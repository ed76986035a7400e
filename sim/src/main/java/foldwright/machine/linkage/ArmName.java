// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** Which arm of a cross. */
public enum ArmName {
    /** Its lower pin is at the fixed end. */
    FROM_FIXED_END,
    /** Its lower pin is at the slider end. */
    FROM_SLIDER_END
}
