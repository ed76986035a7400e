// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import java.util.EnumSet;
import java.util.Set;

/**
 * Pairs of two bodies by the freedoms that they lock, in the axes of marker A. A single free turn
 * is about z. {@link Freedom#RZ} alone locks y of A square to x of B (the cross of a universal
 * joint).
 */
public enum JointKind {
    FIXED(EnumSet.allOf(Freedom.class)),
    REVOLUTE(EnumSet.of(Freedom.TX, Freedom.TY, Freedom.TZ, Freedom.RX, Freedom.RY)),
    PRISMATIC(EnumSet.of(Freedom.TX, Freedom.TY, Freedom.RX, Freedom.RY, Freedom.RZ)),
    CYLINDRICAL(EnumSet.of(Freedom.TX, Freedom.TY, Freedom.RX, Freedom.RY)),
    SPHERICAL(EnumSet.of(Freedom.TX, Freedom.TY, Freedom.TZ)),
    UNIVERSAL(EnumSet.of(Freedom.TX, Freedom.TY, Freedom.TZ, Freedom.RZ)),
    PLANAR(EnumSet.of(Freedom.TZ, Freedom.RX, Freedom.RY)),
    /** Pin in a straight slot: turns about z and slides along x of A. */
    PIN_IN_SLOT(EnumSet.of(Freedom.TY, Freedom.TZ, Freedom.RX, Freedom.RY)),
    /** Ball in a groove along z: only the two sideways forces. */
    GROOVE(EnumSet.of(Freedom.TX, Freedom.TY)),
    /** Point on a plane with normal z. */
    POINT_ON_PLANE(EnumSet.of(Freedom.TZ)),
    /** All turns locked, all travels free. */
    PARALLEL(EnumSet.of(Freedom.RX, Freedom.RY, Freedom.RZ));

    private final Set<Freedom> locked;

    JointKind(Set<Freedom> locked) {
        this.locked = locked;
    }

    /** What the pair locks. */
    public Set<Freedom> locked() {
        return EnumSet.copyOf(locked);
    }
}
