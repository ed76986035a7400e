// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

/** Which way a belt turns on a wheel, going along its route, seen from above. */
public enum Sense {
    /** It bends to the right. */
    CLOCKWISE,
    /** It bends to the left. */
    COUNTERCLOCKWISE
}
