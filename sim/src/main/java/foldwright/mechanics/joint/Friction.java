// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * Dry friction along a coordinate that really sticks: an elastic, perfectly plastic row.
 *
 * <p>While stuck, (coordinate - anchor) + c lambda = 0 with a fixed anchor, so a held load never
 * creeps. While sliding, the row leaves the system and lambda = +-bound against the motion; on
 * acceptance the anchor follows. A sliding row may only go to stick, never straight to the other
 * direction.
 */
public final class Friction extends ScalarRow {
    /** What the row does. */
    public enum Mode {
        /** Holds by its bristle. */
        STICK,
        /** Slides towards smaller values: the friction force is +bound. */
        FORCE_PLUS,
        /** Slides towards larger values: the friction force is -bound. */
        FORCE_MINUS,
        /** Left out: no friction at all. */
        NONE
    }

    /** Share of the sticking bound that remains at a slip speed [m/s or rad/s]. */
    public interface SlipLaw {
        double factor(double speed);
    }

    /**
     * A row at rest just on its bound sticks: rounding must not make it slide and stick in turn.
     */
    private static final double SLACK = 1e-5;

    private final FrictionBound law;
    private SlipLaw slip = speed -> 1;
    private Mode mode = Mode.STICK;
    private double bound;
    private double slidingBound;
    private double heat;
    private double lastLambda;

    /**
     * @param bristle elastic give of the stuck contact [m/N, rad/(N m)], above 0
     */
    public Friction(String name, Coordinate coordinate, FrictionBound law, double bristle) {
        super(name, coordinate, 1);
        if (!(bristle > 0)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "\"%s\": bristle compliance must be above 0", name));
        }
        this.law = law;
        soften(0, bristle, 0);
    }

    /** Makes sliding friction differ from sticking friction. */
    public void slip(SlipLaw next) {
        slip = next;
    }

    public FrictionBound law() {
        return law;
    }

    public Mode mode() {
        return mode;
    }

    /** Sets the mode; for solvers. */
    public void mode(Mode next) {
        mode = next;
    }

    /** Sticking bound set last [N, N m]. */
    public double bound() {
        return bound;
    }

    /** Share of the sticking bound that remains at a slip speed [m/s, rad/s]. */
    public double slipFactor(double speed) {
        return slip.factor(Math.abs(speed));
    }

    /** Takes the bound from the multipliers and the slip speed [m/s, rad/s]. */
    public void load(double[] lambda, double speed) {
        bound = law.bound(lambda);
        slidingBound = bound * slipFactor(speed);
    }

    /** Sets the size of the sliding force [N, N m] and leaves the sticking bound. */
    public void slideAt(double force) {
        slidingBound = force;
    }

    /** Sets the bound itself [N, N m]; for solvers that iterate on it. */
    public void bound(double limit) {
        bound = limit;
        slidingBound = limit;
    }

    @Override
    public boolean engaged() {
        return mode == Mode.STICK;
    }

    @Override
    public double held() {
        return switch (mode) {
            case FORCE_PLUS -> slidingBound;
            case FORCE_MINUS -> -slidingBound;
            default -> 0;
        };
    }

    /**
     * Decides from phi and lambda after a Newton update; tells whether the mode changed. The trial
     * load is what the bristle would carry.
     *
     * @param rounding load that may be no more than rounding of the other loads [N, N m]; asked
     *     only where it decides
     */
    public boolean decide(double phi, double lambda, DoubleSupplier rounding) {
        Mode before = mode;
        double trial = -phi / compliance(0);
        switch (mode) {
            case STICK -> {
                double most = bound * (1 + SLACK);
                double size = Math.abs(lambda);
                if (size > most && size > most + rounding.getAsDouble()) {
                    mode = lambda > 0 ? Mode.FORCE_PLUS : Mode.FORCE_MINUS;
                }
            }
            case FORCE_PLUS -> {
                if (trial < slidingBound) {
                    mode = Mode.STICK;
                }
            }
            case FORCE_MINUS -> {
                if (trial > -slidingBound) {
                    mode = Mode.STICK;
                }
            }
            case NONE -> {}
        }
        return before != mode;
    }

    /** The bristle stands here and carries {@code lambda}. */
    public void anchor(State s, double lambda) {
        aim(coordinate().value(s) + compliance(0) * lambda);
    }

    /** Restores a remembered anchor [m or rad]. */
    public void restore(double anchor, Mode remembered) {
        aim(anchor);
        mode = remembered;
    }

    /** Heat over the accepted steps [J]. */
    public double heat() {
        return heat;
    }

    /**
     * Called at the start of a run: the sum of heat begins at zero, and the bristle of a row that
     * slides stands where it is.
     */
    public void begin(State s, double lambda) {
        heat = 0;
        lastLambda = lambda;
        if (mode != Mode.STICK) {
            anchor(s, mode == Mode.NONE ? 0 : lambda);
        }
    }

    /** The anchor follows a sliding row; its way times the friction force is heat. */
    @Override
    public void accept(State s, double[] lambda) {
        super.accept(s, lambda);
        double now = lambda[rowAt()];
        if (mode != Mode.STICK) {
            double from = target();
            anchor(s, mode == Mode.NONE ? 0 : now);
            heat -= 0.5 * (lastLambda + now) * (target() - from);
        }
        lastLambda = now;
    }
}
