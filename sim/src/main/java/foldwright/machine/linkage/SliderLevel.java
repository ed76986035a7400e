// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** Which slider ends. */
public enum SliderLevel {
    /** Those in the base. */
    BASE,
    /** Those in the deck. */
    DECK
}
