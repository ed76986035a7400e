// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;

/** Travel of marker B's point along marker A's z axis [m]. */
public final class AxisTravel extends Coordinate {
    private final Frame a;
    private final Frame b;
    private final double[] m = new double[3];
    private final Hessians second = new Hessians();

    public AxisTravel(Marker from, Marker to) {
        super(from.body().index(), to.body().index());
        a = new Frame(from);
        b = new Frame(to);
    }

    private void place(State s) {
        a.place(s);
        a.axis(s, 2);
        b.place(s);
    }

    @Override
    public double value(State s) {
        place(s);
        return PairJoint.along(a, b, 6);
    }

    @Override
    public double evaluate(State s, double[] g, int at) {
        place(s);
        return PairJoint.translation(s, a, b, 6, m, g, at, at + 6);
    }

    @Override
    public double convective(State s) {
        place(s);
        return PairJoint.translationConvective(s, a, b, 6);
    }

    @Override
    public void hessian(State s, double factor, Stiffness out) {
        place(s);
        second.translation(s, a, b, a.u, 6, factor, out);
    }
}
