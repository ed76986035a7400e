// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

/** What carries the gantry. */
public enum StandsOn {
    /** The lift raises the gantry. */
    DECK,
    /** The gantry stands still and the lift raises the work. */
    BASE
}
