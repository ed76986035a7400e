// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.force;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Stiffness;

/** A force law acting along a coordinate. */
public final class LawForce implements Force {
    private final String name;
    private final Coordinate coordinate;
    private final ForceLaw.Response response = new ForceLaw.Response();
    private final int[] bodies;
    private final double[] g;
    private final double[] block = new double[36];
    private ForceLaw law;
    private double value;
    private double rate;
    private double time;
    private double lastTime;
    private double lastRate;
    private double lastValue;
    private double lastForce;
    private double lastLoss;
    private double lastEnergy;
    private double work;
    private double heat;

    public LawForce(String name, Coordinate coordinate, ForceLaw law) {
        this.name = name;
        this.coordinate = coordinate;
        this.law = law;
        bodies = coordinate.bodies();
        g = new double[6 * bodies.length];
    }

    @Override
    public String name() {
        return name;
    }

    /** Follows another law from now on. */
    public void follow(ForceLaw next) {
        law = next;
    }

    /** The coordinate it acts along. */
    public Coordinate coordinate() {
        return coordinate;
    }

    /** Force at the last evaluation, towards larger values [N or N m]. */
    public double force() {
        return response.force;
    }

    /** Coordinate at the last evaluation [m or rad]. */
    public double value() {
        return value;
    }

    /** Rate at the last evaluation [m/s or rad/s]. */
    public double rate() {
        return rate;
    }

    @Override
    public int[] bodies() {
        return bodies.clone();
    }

    @Override
    public void apply(State s, double[] load) {
        value = coordinate.evaluate(s, g, 0);
        rate = coordinate.rate(s, g, 0);
        time = s.time;
        law.evaluate(value, rate, time, response);
        double f = response.force;
        for (int k = 0; k < bodies.length; k++) {
            int to = 6 * bodies[k];
            for (int c = 0; c < 6; c++) {
                load[to + c] += f * g[6 * k + c];
            }
        }
    }

    @Override
    public void tangent(State s, double stiffness, double damping, Stiffness out) {
        double f = stiffness * response.stiffness + damping * response.damping;
        for (int p = 0; p < bodies.length; p++) {
            for (int q = p; q < bodies.length; q++) {
                for (int i = 0; i < 6; i++) {
                    for (int j = 0; j < 6; j++) {
                        block[6 * i + j] = f * g[6 * p + i] * g[6 * q + j];
                    }
                }
                out.add(bodies[p], bodies[q], block);
            }
        }
    }

    @Override
    public void geometric(State s, double stiffness, Stiffness out) {
        coordinate.hessian(s, -stiffness * response.force, out);
    }

    @Override
    public double energy() {
        return response.energy;
    }

    @Override
    public double work() {
        return work;
    }

    @Override
    public double heat() {
        return heat;
    }

    @Override
    public double largestUpdate() {
        return law.largestUpdate();
    }

    @Override
    public double change(double[] z, int shift) {
        double sum = 0;
        for (int k = 0; k < bodies.length; k++) {
            int from = 6 * bodies[k] + shift;
            for (int c = 0; bodies[k] > 0 && c < 6; c++) {
                sum += g[6 * k + c] * z[from + c];
            }
        }
        return sum;
    }

    @Override
    public double astray(double[] z, int shift, double rateFactor, double step) {
        return 0.5 * step * Math.abs(rate - lastRate + rateFactor * change(z, shift));
    }

    @Override
    public boolean coarse() {
        return law.coarse(lastValue, value, lastTime, time);
    }

    @Override
    public void begin(State s) {
        work = 0;
        heat = 0;
        remember();
    }

    private void remember() {
        lastTime = time;
        lastRate = rate;
        lastValue = value;
        lastForce = response.force;
        lastLoss = response.loss;
        lastEnergy = response.energy;
    }

    /**
     * Trapezoids of the step. A law that stores no energy is a source of work; one that does is a
     * spring, whose work is the change of its energy.
     */
    @Override
    public void accept(State s) {
        coordinate.accept(s);
        double move = value - lastValue;
        heat -= 0.5 * (lastLoss + response.loss) * move;
        if (lastEnergy == 0 && response.energy == 0) {
            double active = lastForce - lastLoss + response.force - response.loss;
            work += 0.5 * active * move;
        }
        remember();
    }
}
