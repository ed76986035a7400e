// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/**
 * Where the carriage origin may go.
 *
 * @param xMin lowest place along the bridge, from the bridge centre [m]
 * @param xMax highest place along the bridge [m]
 * @param yMin lowest place of the bridge along the rails [m, base frame]
 * @param yMax highest place of the bridge [m]
 */
public record Travel(double xMin, double xMax, double yMin, double yMax) {
    public Travel {
        Finite.check("travel", "xMin", xMin);
        Finite.check("travel", "xMax", xMax);
        Finite.check("travel", "yMin", yMin);
        Finite.check("travel", "yMax", yMax);
        if (!(xMin < xMax) || !(yMin < yMax)) {
            throw new IllegalArgumentException(
                    "travel x "
                            + xMin
                            + " .. "
                            + xMax
                            + ", y "
                            + yMin
                            + " .. "
                            + yMax
                            + " m; allowed: each lower end below its upper end");
        }
    }

    public double xMid() {
        return 0.5 * (xMin + xMax);
    }

    public double yMid() {
        return 0.5 * (yMin + yMax);
    }

    /** Place at a share of the travel along the bridge, 0 to 1 [m]. */
    public double xAt(double share) {
        return xMin + share * (xMax - xMin);
    }

    /** Place at a share of the travel along the rails, 0 to 1 [m]. */
    public double yAt(double share) {
        return yMin + share * (yMax - yMin);
    }

    /** Whether a place is inside, ends included to a micrometre. */
    public boolean contains(double x, double y) {
        double slack = 1e-6;
        return x >= xMin - slack && x <= xMax + slack && y >= yMin - slack && y <= yMax + slack;
    }
}
