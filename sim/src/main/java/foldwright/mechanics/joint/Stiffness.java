// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/**
 * Takes 6 x 6 blocks of a symmetric matrix over the bodies (geometric stiffness, force tangents).
 */
public interface Stiffness {
    /**
     * Adds {@code block} (row-major; rows of body {@code a}, columns of body {@code b}) and, for
     * two different bodies, its transpose at (b, a). For one body only the symmetric part counts.
     */
    void add(int a, int b, double[] block);
}
