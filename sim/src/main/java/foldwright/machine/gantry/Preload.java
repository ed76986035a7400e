// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

/** How blocks are fitted to their rail. */
public enum Preload {
    /** With clearance. */
    CLEARANCE,
    /** Lightly preloaded. */
    LIGHT,
    /** With medium preload. */
    MEDIUM
}
