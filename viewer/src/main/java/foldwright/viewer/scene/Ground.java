// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

/** What the table shows below the machine. */
public enum Ground {
    /** Bare paper. */
    PLAIN,
    /** A grid of 10 mm, stronger every 50 mm, with millimetres along two edges. */
    GRID
}
