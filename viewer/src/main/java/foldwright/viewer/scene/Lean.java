// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

/**
 * How the deck stands off its ideal place, as drawn: base pins stay, what is between goes along in
 * proportion to its height.
 *
 * @param tilt rise of the deck a metre towards the back [1]
 * @param shift of the deck towards the back [m]
 */
public record Lean(double tilt, double shift) {
    /** Upright. */
    public static final Lean NONE = new Lean(0, 0);
}
