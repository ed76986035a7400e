// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/** Keeps a coordinate at a constant value: screw, gear, belt, rod of fixed length. */
public final class Coupling extends ScalarRow {
    /**
     * @param value what the coordinate is kept at [m or rad]
     */
    public Coupling(String name, Coordinate coordinate, double value) {
        super(name, coordinate, 1);
        aim(value);
    }

    /** Keeps the coordinate at another value from now on [m or rad]: phase error, length error. */
    public void keep(double value) {
        aim(value);
    }
}
