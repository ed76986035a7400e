// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

/** Which of the two rails is floating. */
public enum Floating {
    /** Neither. */
    NONE,
    /** The one at negative x. */
    LEFT,
    /** The one at positive x. */
    RIGHT
}
