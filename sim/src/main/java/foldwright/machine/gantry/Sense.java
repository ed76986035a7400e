// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

/** Which way round a belt passes a wheel, seen from above. */
public enum Sense {
    /** With the hands of a clock. */
    CLOCKWISE,
    /** Against the hands of a clock. */
    COUNTERCLOCKWISE
}
