// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/** Relative travel along, or turn about, an axis of marker A. */
public enum Freedom {
    TX("force along x"),
    TY("force along y"),
    TZ("force along z"),
    RX("moment about x"),
    RY("moment about y"),
    RZ("moment about z");

    private final String load;

    Freedom(String load) {
        this.load = load;
    }

    /** The load that locking this freedom carries. */
    public String load() {
        return load;
    }
}
