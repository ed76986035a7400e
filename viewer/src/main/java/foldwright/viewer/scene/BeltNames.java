// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

/** Names of the pieces of belts, by which loads find them. */
public final class BeltNames {
    private BeltNames() {}

    /**
     * Strand of the drive belt that has left the motor pulley and passed so many of the screw
     * pulleys; while the deck rises the first is slack and the last is hauled in.
     */
    public static String driveStrand(int passed, int screws) {
        if (passed == 0) {
            return "drive belt, slack strand";
        }
        return passed == screws
                ? "drive belt, tight strand"
                : "drive belt, strand after screw pulley " + passed;
    }

    /** Free strand of a gantry belt between two wheels or anchors. */
    public static String strand(String belt, String from, String to) {
        return belt + ", " + from + " to " + to;
    }

    /** A gantry belt where it lies on a wheel. */
    public static String wrap(String belt, String wheel) {
        return belt + ", round " + wheel;
    }
}
