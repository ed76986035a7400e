// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/** Which way the deck moves; friction turns round with it. */
public enum Direction {
    RAISING("raising", 1),
    LOWERING("lowering", -1);

    private final String label;
    private final int sign;

    Direction(String label, int sign) {
        this.label = label;
        this.sign = sign;
    }

    /** The word printed in tables and files. */
    public String label() {
        return label;
    }

    /** +1 up, -1 down. */
    public int sign() {
        return sign;
    }
}
