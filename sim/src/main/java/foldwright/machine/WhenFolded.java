// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

/** Where the tool is when the machine is folded. */
public enum WhenFolded {
    /** It is taken off first. */
    TAKEN_OFF,
    /** It stays in its seat. */
    STAYS_ON
}
