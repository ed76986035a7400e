// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.sqrt;

/**
 * The speed at which a corner may be passed: that of an arc tangent to both moves which comes
 * within {@code deviation} of the vertex, at a centripetal acceleration {@code a}. With the inner
 * angle theta, cos theta = -u1.u2, R = deviation sin(theta/2)/(1 - sin(theta/2)), v = sqrt(a R).
 * (S. Jeon, 2011; M. Widmann, note on the same rule.)
 */
final class CornerSpeed {
    private CornerSpeed() {}

    /**
     * @param cosine u1.u2 of the unit tangents before and after [1]
     * @return speed [m/s]; infinite on a straight, zero at a reversal
     */
    static double of(double cosine, double deviation, double a) {
        double sine = sqrt(Math.max(0, 0.5 * (1 + cosine)));
        return sine >= 1 ? Double.POSITIVE_INFINITY : sqrt(a * deviation * sine / (1 - sine));
    }
}
