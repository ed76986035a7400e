// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/** How a wheel turns, seen from above, while the belt runs through it in list order. */
public enum Sense {
    COUNTER_CLOCKWISE(1),
    CLOCKWISE(-1);

    private final int sign;

    Sense(int sign) {
        this.sign = sign;
    }

    /** +1 counter-clockwise, -1 clockwise. */
    public int sign() {
        return sign;
    }

    public Sense opposite() {
        return this == CLOCKWISE ? COUNTER_CLOCKWISE : CLOCKWISE;
    }
}
