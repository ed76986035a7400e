// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

/**
 * Force of a spring over the distance of its ends, or moment over the angle of its legs.
 *
 * <p>The coordinate {@code x} is a length [m] or an angle [rad], growing as the spring opens. Force
 * [N] or moment [N·m] is positive when it pushes towards larger {@code x}. For every law
 *
 * <ul>
 *   <li>{@code force} is continuous and never rises with {@code x};
 *   <li>{@code stiffness} is {@code -d force/dx}, exactly, at kinks from the compressed side;
 *   <li>{@code energy} is the exact integral of the force from {@code x} to the free coordinate, so
 *       {@code d energy/dx = -force} and it is nowhere negative;
 *   <li>a {@link Attachment#TOUCHING} spring gives exactly zero beyond its free coordinate;
 *   <li>short of the limit coordinate (coils solid, stroke used up) the force goes on as a stiff
 *       stop, so that a solver that oversteps is pushed back. Its stiffness is a numerical guard,
 *       not a property of the part: a design that enters it has failed its check.
 * </ul>
 *
 * All calls are pure, cost some tens of arithmetic operations, and allocate nothing.
 */
public sealed interface SpringLaw permits LinearLaw, ConicalLaw, GasLaw {
    /** Stiffness of the stop at the limit, as a multiple of the initial rate; no source. */
    double STOP_RATIO = 1000;

    /** Force or moment at coordinate {@code x} [N or N·m]. */
    double force(double x);

    /** {@code -d force/dx} at coordinate {@code x} [N/m or N·m/rad]. */
    double stiffness(double x);

    /** Energy stored at coordinate {@code x}, 0 where the spring is free [J]. */
    double energy(double x);

    /**
     * Force, stiffness and energy at once, for solvers that need all three; the same values as the
     * single calls.
     */
    void evaluate(double x, SpringPoint out);

    /** Coordinate beyond which the spring is free: free length or free angle [m or rad]. */
    double freeCoordinate();

    /**
     * Smallest coordinate of normal use: solid length, shortest length, or end angle [m or rad].
     */
    double limitCoordinate();

    /** Whether {@code x} counts metres between two points or radians between two bodies. */
    Measure measure();

    /** What the coordinate of a law measures. */
    enum Measure {
        LENGTH,
        ANGLE
    }
}
