// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** Where pins are. */
public enum PinPlace {
    /** Fixed pins on the base. */
    BASE_FIXED,
    /** Pins of the slider ends in the base. */
    BASE_SLIDER,
    /** Centre pins of the crosses. */
    CENTRE,
    /** Pins between two stages, both ends. */
    JUNCTION,
    /** Fixed pins on the deck. */
    DECK_FIXED,
    /** Pins of the slider ends in the deck. */
    DECK_SLIDER
}
