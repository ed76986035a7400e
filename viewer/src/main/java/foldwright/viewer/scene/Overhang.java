// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

/**
 * What of a machine stands out beyond the end of its base at +x.
 *
 * @param length how far [m]
 * @param swing how far it swings there to the front and the back [m]
 */
public record Overhang(double length, double swing) {
    /** Nothing does. */
    public static final Overhang NONE = new Overhang(0, 0);
}
