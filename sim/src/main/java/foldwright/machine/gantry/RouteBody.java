// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

/** What wheels, anchors and motors are fixed to. */
public enum RouteBody {
    /** What the gantry stands on; places in the gantry frame. */
    FRAME,
    /** The bridge; places from its middle, on the line of its blocks. */
    BRIDGE,
    /** The carriage; places from the middle of its blocks. */
    CARRIAGE
}
