// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** Where the arms of neighbouring stages lie. */
public enum ArmPlanes {
    /** In one plane: they meet when folded far. */
    SHARED,
    /** In planes beside each other: they pass. */
    OFFSET
}
