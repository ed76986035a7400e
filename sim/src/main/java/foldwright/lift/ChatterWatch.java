// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * Tells a drive that chatters from a run with a jolt in it, by where steps had to be halved.
 *
 * <p>A stall, a spring that lets go or a pole that slips halves many steps within a third of a
 * second and then none. A self-locking screw that the load drives faster than friction lets it
 * (kinematic constraint instability, see {@code docs/lift-time.md}) halves steps again and again.
 * How large that motion becomes depends on damping nobody knows, so a run that spends itself on it
 * is ended: its numbers would be worth nothing.
 */
final class ChatterWatch {
    /** Steps looked at together: a third of a second at 5 ms. */
    static final int STRETCH = 64;

    /** Stretches with halved steps from which a drive chatters; jolts have three at most. */
    static final int MANY = 8;

    /** Halvings from which a drive that chatters is not followed further: a few seconds' work. */
    static final long COSTLY = 4000;

    private long stretch = -1;
    private long halvings;
    private int stretches;

    /**
     * Takes note of a step.
     *
     * @param steps done so far
     * @param halved times that a step was halved so far
     * @return whether the drive chatters from this step on: true once
     */
    boolean begins(long steps, long halved) {
        boolean more = halved > halvings;
        halvings = halved;
        if (!more || steps / STRETCH == stretch) {
            return false;
        }
        stretch = steps / STRETCH;
        stretches++;
        return stretches == MANY;
    }

    /** Whether the drive chatters so much that the run is not worth its work. */
    boolean hopeless() {
        return stretches >= MANY && halvings >= COSTLY;
    }
}
