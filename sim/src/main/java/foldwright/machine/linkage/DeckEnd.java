// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/** Which end of the deck carries its fixed pins. */
public enum DeckEnd {
    /** Above the fixed pins of the base. */
    OVER_FIXED_END,
    /** Above the slider ends of the base. */
    OVER_SLIDER_END
}
