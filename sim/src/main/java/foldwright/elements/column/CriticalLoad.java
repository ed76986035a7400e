// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.column;

/**
 * The load at which a straight column gives way.
 *
 * @param force critical load [N]
 * @param slenderness free length over radius of gyration [1]
 * @param transition slenderness at which the two curves meet [1]
 * @param curve which of them decided
 */
public record CriticalLoad(double force, double slenderness, double transition, Curve curve) {
    /** The two column curves of Shigley 9th ed. section 4-12 and 4-13. */
    public enum Curve {
        /** Elastic buckling of a slender column, Eq. 4-43. */
        EULER,
        /** Parabola of J. B. Johnson for stockier ones, Eq. 4-48. */
        JOHNSON
    }
}
