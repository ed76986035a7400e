// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

/** What a mass moves with. */
public enum Carrier {
    /** Fixed to the deck. */
    WITH_DECK,
    /** Moves with the bridge of the gantry. */
    WITH_BRIDGE,
    /** Moves with the carriage of the gantry. */
    WITH_CARRIAGE
}
