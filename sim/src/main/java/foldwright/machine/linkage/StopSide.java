// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** Which motion a stop blocks. */
public enum StopSide {
    /** It limits the height. */
    RISING,
    /** It carries the folded machine. */
    SINKING
}
