// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Statics;
import foldwright.mechanics.solve.Stepper;

/**
 * A lift unfolded in time from just above flat to the top by screws of prescribed length: a second
 * of smooth start, then even rise; pins, guides and springs as the machine has them, friction
 * included. For timing the integrator on a real linkage, without motor.
 */
public final class SmoothUnfold {
    /** Time of the start from rest [s]. */
    private static final double START = 1;

    private final Stepper stepper;
    private final double seconds;

    /**
     * @param seconds of the whole unfolding, more than the start
     * @param step of the integrator [s]
     */
    public SmoothUnfold(Machine machine, double seconds, double step) {
        this.seconds = seconds;
        LiftModel model = new LiftModel(machine, Give.IDEAL);
        double low = model.lowest() * 1.001;
        double speed = (model.highest() - low) / (seconds - 0.5 * START);
        for (int i = 0; i < model.screws().size(); i++) {
            Driver driver = (Driver) model.screws().get(i).row();
            driver.follow(new Rise(model.path(i), low, speed));
        }
        var state = model.mechanism().start();
        model.pose(state, model.scissor().atHeight(low));
        state.time = 0;
        Equilibrium rest = new Statics(model.mechanism()).holding(state);
        stepper = new Stepper(model.mechanism(), rest, Settings.ofStep(step));
    }

    /** Runs to the top; returns the integrator for its counts. */
    public Stepper run() {
        if (stepper.runTo(seconds) == Stepper.Outcome.FAILED) {
            throw new IllegalStateException(stepper.failure().toString());
        }
        return stepper;
    }

    /** Length of a screw while the deck rises; the speed grows as u2 (3 - 2 u) over the start. */
    private record Rise(NutPath path, double low, double speed) implements PrescribedMotion {
        private double height(double t) {
            double u = t / START;
            return low + speed * (u < 1 ? START * u * u * u * (1 - 0.5 * u) : t - 0.5 * START);
        }

        private double velocity(double t) {
            double u = t / START;
            return speed * (u < 1 ? u * u * (3 - 2 * u) : 1);
        }

        @Override
        public double value(double t) {
            return path.value(height(t));
        }

        @Override
        public double rate(double t) {
            return path.rate(height(t)) * velocity(t);
        }

        @Override
        public double acceleration(double t) {
            double u = t / START;
            double a = u < 1 ? speed * 6 * u * (1 - u) / START : 0;
            double v = velocity(t);
            return path.acceleration(height(t)) * v * v + path.rate(height(t)) * a;
        }
    }
}
