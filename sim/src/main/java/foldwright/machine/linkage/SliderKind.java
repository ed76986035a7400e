// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** How a slider end moves in its guide. */
public enum SliderKind {
    /** On rollers or balls. */
    ROLLERS,
    /** Sliding. */
    PLAIN
}
