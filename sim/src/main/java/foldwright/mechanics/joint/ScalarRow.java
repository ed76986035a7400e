// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;

/** One row along a coordinate: phi = sign (coordinate - target). */
public abstract class ScalarRow extends Rows {
    private final Coordinate coordinate;
    private final double sign;
    private double target;

    ScalarRow(String name, Coordinate coordinate, double sign) {
        super(name, 1, coordinate.bodies());
        this.coordinate = coordinate;
        this.sign = sign;
    }

    /** The coordinate that the row acts along. */
    public final Coordinate coordinate() {
        return coordinate;
    }

    /** Value that phi measures from [m or rad]. */
    public final double target() {
        return target;
    }

    final double sign() {
        return sign;
    }

    final void aim(double value) {
        target = value;
    }

    /**
     * Whether the row is part of the system. A row that is not keeps its multiplier at {@link
     * #held()}.
     */
    public boolean engaged() {
        return true;
    }

    /** Multiplier of a row that is not engaged [N or N m]. */
    public double held() {
        return 0;
    }

    @Override
    public String rowName(int row) {
        return "along its coordinate";
    }

    @Override
    public final void evaluate(State s, double[] phi, double[] g, int at) {
        double value = coordinate.evaluate(s, g, at);
        phi[rowAt()] = sign * (value - target);
        if (sign < 0) {
            int n = 6 * count();
            for (int i = at; i < at + n; i++) {
                g[i] = -g[i];
            }
        }
    }

    @Override
    public final void convective(State s, double[] out) {
        out[rowAt()] = sign * coordinate.convective(s);
    }

    @Override
    public final void geometric(State s, double[] lambda, Stiffness out) {
        coordinate.hessian(s, -sign * lambda[rowAt()], out);
    }

    @Override
    public void accept(State s, double[] lambda) {
        coordinate.accept(s);
    }
}
