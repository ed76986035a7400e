// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** A side of the lift. */
public enum Side {
    /** At negative Y. */
    FRONT,
    /** At positive Y. */
    BACK
}
