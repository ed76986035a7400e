// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;

/**
 * The height the drive is commanded to be at, over time, from rest to rest: the asked speed at each
 * height, reached and left with the asked acceleration.
 *
 * <p>The square of the deck speed is limited backwards and forwards over a table of heights, as 2 a
 * dh allows; inside a cell the acceleration is constant. Built once; asked forwards without
 * allocation.
 */
public final class RiseCommand {
    private static final int CELLS = 2000;

    private final double[] time = new double[CELLS + 1];
    private final double[] height = new double[CELLS + 1];
    private final double[] speed = new double[CELLS + 1];
    private final double way;
    private int cell;

    /**
     * @param law asked speed and acceleration
     * @param path screw length over height, for laws that state motor speed
     * @param from pivot height at the start [m]
     * @param to pivot height at the end [m]
     */
    RiseCommand(RiseLaw law, NutPath path, double from, double to) {
        way = Math.signum(to - from);
        double step = Math.abs(to - from) / CELLS;
        double[] acceleration = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            height[i] = from + (to - from) * i / CELLS;
            double perHeight = Math.abs(path.rate(height[i]));
            speed[i] = law.deckSpeed(height[i], perHeight);
            acceleration[i] = law.deckAcceleration(perHeight);
        }
        speed[0] = 0;
        speed[CELLS] = 0;
        for (int i = CELLS - 1; i > 0; i--) {
            speed[i] = Math.min(speed[i], gained(speed[i + 1], acceleration[i], step));
        }
        for (int i = 1; i <= CELLS; i++) {
            speed[i] = Math.min(speed[i], gained(speed[i - 1], acceleration[i - 1], step));
            time[i] = time[i - 1] + 2 * step / (speed[i - 1] + speed[i]);
        }
    }

    /** The unfolding of a machine from flat to the top, as its file asks for it. */
    public static RiseCommand unfolding(Machine machine) {
        LiftModel lift = new LiftModel(machine, Give.IDEAL);
        RiseLaw law = new RiseLaw(machine.drive().rise(), new DriveTrain(machine.drive()));
        return new RiseCommand(law, lift.path(0), lift.lowest(), lift.highest());
    }

    private static double gained(double v, double a, double step) {
        return Math.sqrt(v * v + 2 * a * step);
    }

    /** Begins later [s]. */
    void postpone(double by) {
        for (int i = 0; i <= CELLS; i++) {
            time[i] += by;
        }
    }

    /** Time at which the deck is first asked to move [s]. */
    double begin() {
        return time[0];
    }

    /** Time at which the last height is reached [s]. */
    public double end() {
        return time[CELLS];
    }

    private double into(double t) {
        double within = Math.max(time[0], Math.min(t, time[CELLS]));
        while (cell > 0 && time[cell] > within) {
            cell--;
        }
        while (cell < CELLS - 1 && time[cell + 1] <= within) {
            cell++;
        }
        return within - time[cell];
    }

    /** Commanded pivot height [m]. */
    public double height(double t) {
        double u = into(t);
        double a = (speed[cell + 1] - speed[cell]) / (time[cell + 1] - time[cell]);
        return height[cell] + way * u * (speed[cell] + 0.5 * a * u);
    }

    /** Commanded rate of the pivot height, signed [m/s]. */
    double rate(double t) {
        if (t < time[0] || t >= time[CELLS]) {
            return 0;
        }
        double u = into(t);
        double a = (speed[cell + 1] - speed[cell]) / (time[cell + 1] - time[cell]);
        return way * (speed[cell] + a * u);
    }

    /** Commanded second rate of the pivot height, signed [m/s²]. */
    double acceleration(double t) {
        if (t < time[0] || t >= time[CELLS]) {
            return 0;
        }
        into(t);
        return way * (speed[cell + 1] - speed[cell]) / (time[cell + 1] - time[cell]);
    }
}
