// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

/** How the ends of a compression spring are formed (Shigley 9th ed. Table 10-1, from memory). */
public enum EndCoils {
    PLAIN(0, 1),
    PLAIN_GROUND(1, 0),
    SQUARED(2, 1),
    SQUARED_GROUND(2, 0);

    private final int dead;
    private final int extraWires;

    EndCoils(int dead, int extraWires) {
        this.dead = dead;
        this.extraWires = extraWires;
    }

    /** Coils that do not move, N_t - N_a. */
    public int deadCoils() {
        return dead;
    }

    /** Total coils for that many active ones. */
    public double totalCoils(double activeCoils) {
        return activeCoils + dead;
    }

    /** Length with all coils touching, d N_t when ground, d (N_t + 1) when not [m]. */
    public double solidLength(double wireDiameter, double activeCoils) {
        return wireDiameter * (totalCoils(activeCoils) + extraWires);
    }
}
