// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

/** What a piece of surface is made of: decides its colour, and its pattern where it has one. */
public enum Zone {
    /** Load ink when a load is shown on the part, else the aluminium below. */
    LOAD("aluminium"),
    ALUMINIUM("aluminium"),
    FRAME("frame"),
    STEEL("steel"),
    BRONZE("bronze"),
    MOTOR("motor"),
    /** Belt; toothed by the way along it. */
    BELT("belt"),
    /** Coils; load ink when a load is shown. */
    SPRING("spring"),
    PLASTIC("printed_plastic"),
    /** Steel with a thread whose lead comes with the instance; load ink when a load is shown. */
    THREAD("steel"),
    /** Steel of rails, pale. */
    RAIL("steel"),
    /** Blocks and nuts that carry a load: load ink when shown, else steel. */
    BLOCK("steel"),
    /** Toothed rim of a wheel. */
    RIM("steel"),
    /** A dark opening. */
    DARK("motor");

    /** Key in the material part of the palette. */
    public final String material;

    Zone(String material) {
        this.material = material;
    }
}
