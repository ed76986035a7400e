// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

/** Roles of the neutral colours and of the one accent. */
public enum Ground {
    /** Background of the whole sheet. */
    PAPER,
    /** The opened card. */
    SHEET,
    /** Filled ground under a curve. */
    RECESS,
    /** Hairlines and grid; decoration only. */
    RULE,
    /** Text, needed curve, axes. */
    INK,
    /** Second text, ticks, ghosts. */
    INK2,
    /** Third text, range ends, fold lines. */
    INK3,
    /** What the hand holds. */
    PINE
}
