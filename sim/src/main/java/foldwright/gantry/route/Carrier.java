// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.Locale;

/** The body that carries a wheel or an anchor. */
public enum Carrier {
    /** The frame that holds the leg rails; frame origin midway between the rails at y = 0. */
    BASE,
    /** The cross member; frame origin at its centre, midway between the rails. */
    BRIDGE,
    /** What runs along the bridge; frame origin at its guide point on the bridge. */
    CARRIAGE;

    /** The word people read. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
