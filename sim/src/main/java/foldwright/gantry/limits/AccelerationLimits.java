// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

import foldwright.gantry.model.AxisMotor;
import foldwright.gantry.model.BlockLoads;
import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.GantryTrouble;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Statics;
import foldwright.gantry.model.ToothHold;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.Travel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The largest steady acceleration that keeps all limits, by place and direction.
 *
 * <p>Quasi-static: what rings after a change of acceleration is not in it; a replay shows that.
 * Motors must give their torque at the speed asked for. Found by false position on the limit that
 * is used most, to a part in ten thousand.
 */
public final class AccelerationLimits {
    /** No answer is looked for above this [m/s2]. */
    public static final double HIGHEST = 500;

    /** Use of the tension limit by a slack belt, whose tension cannot fall further. */
    private static final double SLACK = 1.5;

    private static final double CLOSE = 1e-4;

    /** An acceleration nobody would call one [m/s2]. */
    private static final double SLIGHT = 0.02;

    private final GantryModel model;
    private final Allowed allowed;
    private final FrictionCase friction;
    private final double speed;
    private final Statics statics;
    private final ToothHold teeth;

    /**
     * Limits for a machine.
     *
     * @param speed at which the motors must still give their torque [m/s]
     */
    public AccelerationLimits(
            GantryModel model, Allowed allowed, FrictionCase friction, double speed) {
        this.model = model;
        this.allowed = allowed;
        this.friction = friction;
        this.speed = speed;
        statics = new Statics(model, Statics.Hold.FIELDS);
        teeth = new ToothHold(statics.kernel().system());
    }

    /** Share of the motors' torque from which a missing balance is put down to them. */
    private static final double MOTOR_AT_ITS_END = 0.9;

    /**
     * One settled state with the share of every limit in use; where none was found the state at
     * rest, and what the solver said.
     */
    private record Trial(
            double acceleration,
            Map<Criterion, Double> use,
            GantryState state,
            Optional<GantryTrouble> trouble) {
        double most() {
            return use.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        }

        Criterion first() {
            return use.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
        }
    }

    /** Largest acceleration at a place in a direction. */
    public LimitPoint at(double x, double y, Heading heading) {
        Trial rest = trial(x, y, heading, 0);
        if (rest.most() > 1) {
            return point(x, y, heading, rest, rest.first());
        }
        if (playIsTooMuch(x, y, heading)) {
            return point(x, y, heading, rest, Criterion.SKEW);
        }
        Trial low = rest;
        Trial high = trial(x, y, heading, 1);
        while (high.most() <= 1 && high.acceleration < HIGHEST) {
            low = high;
            high = trial(x, y, heading, Math.min(HIGHEST, 2 * high.acceleration));
        }
        if (high.most() <= 1) {
            return point(x, y, heading, high, high.first());
        }
        for (int i = 0; i < 60; i++) {
            double gap = high.acceleration - low.acceleration;
            if (gap < CLOSE * high.acceleration) {
                break;
            }
            Trial mid = trial(x, y, heading, next(low, high, i));
            if (mid.most() <= 1) {
                low = mid;
            } else {
                high = mid;
            }
        }
        blameMotorsOnly(low, high);
        return point(x, y, heading, low, high.first());
    }

    /** A balance that is missing although motors had torque to spare is no limit but a failure. */
    private static void blameMotorsOnly(Trial low, Trial high) {
        if (high.trouble.isPresent() && low.use.get(Criterion.MOTOR_TORQUE) < MOTOR_AT_ITS_END) {
            throw high.trouble.get();
        }
    }

    /**
     * Whether the slightest push takes the bridge through its play to a skew beyond the limit. At
     * rest the model holds it in the middle, where a real one stays only by chance. Belts that hold
     * the bridge within its play (the crossed layout) do not let it.
     */
    private boolean playIsTooMuch(double x, double y, Heading heading) {
        double free = model.bridgeGuide().freeYaw() * model.span();
        return free > allowed.skew() && trial(x, y, heading, SLIGHT).use.get(Criterion.SKEW) > 1;
    }

    /** False position, every third time the middle, so that kinks cannot stall it. */
    private static double next(Trial low, Trial high, int i) {
        double gap = high.acceleration - low.acceleration;
        double rise = high.most() - low.most();
        if (i % 3 == 2 || !(rise > 0) || Double.isInfinite(rise)) {
            return low.acceleration + 0.5 * gap;
        }
        double share = (1 - low.most()) / rise;
        // A hair to either side of the crossing, so that both ends close in.
        double nudge = i % 2 == 0 ? 0.3 * CLOSE : -0.3 * CLOSE;
        double held = Math.max(1e-3, Math.min(1 - 1e-3, share));
        return low.acceleration + gap * held + nudge * high.acceleration;
    }

    private static LimitPoint point(
            double x, double y, Heading heading, Trial trial, Criterion setBy) {
        return new LimitPoint(x, y, heading, trial.acceleration, setBy, trial.use, trial.state);
    }

    /** What is asked at a place in a direction. */
    private interface Asking {
        void at(double x, double y, Heading heading);
    }

    /** A grid of places over the travel, ends included, in all directions. */
    public List<LimitPoint> map(int columns, int rows) {
        List<LimitPoint> points = new ArrayList<>();
        everywhere(columns, rows, (x, y, heading) -> points.add(at(x, y, heading)));
        return points;
    }

    /**
     * The place of such a grid with the least acceleration in each direction, the first of equals.
     * Where a place keeps all limits at the least known so far, and a little more than what is
     * found would be off by, its own is not looked for.
     */
    public Map<Heading, LimitPoint> least(int columns, int rows) {
        Map<Heading, LimitPoint> least = new EnumMap<>(Heading.class);
        everywhere(
                columns,
                rows,
                (x, y, heading) -> {
                    LimitPoint known = least.get(heading);
                    double beyond =
                            known == null
                                    ? Double.POSITIVE_INFINITY
                                    : (1 + 2 * CLOSE) * known.acceleration();
                    if (known == null || !keeps(x, y, heading, beyond)) {
                        least.merge(heading, at(x, y, heading), LimitPoint::lesser);
                    }
                });
        return least;
    }

    private void everywhere(int columns, int rows, Asking asking) {
        Travel t = model.layout().travel();
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                double x = t.xAt(columns > 1 ? i / (columns - 1.0) : 0.5);
                double y = t.yAt(rows > 1 ? j / (rows - 1.0) : 0.5);
                for (Heading heading : Heading.values()) {
                    asking.at(x, y, heading);
                }
            }
        }
    }

    /** Whether every limit is kept at an acceleration [m/s2], and at rest. */
    private boolean keeps(double x, double y, Heading heading, double acceleration) {
        return acceleration < HIGHEST
                && trial(x, y, heading, acceleration).most() <= 1
                && trial(x, y, heading, 0).most() <= 1
                && !playIsTooMuch(x, y, heading);
    }

    private Trial trial(double x, double y, Heading heading, double a) {
        Map<Criterion, Double> use = new EnumMap<>(Criterion.class);
        GantryState state;
        try {
            state = statics.settle(x, y, load(heading, a));
        } catch (GantryTrouble weakMotor) {
            // No balance: the fields cannot hold that load.
            use.put(Criterion.MOTOR_TORQUE, Double.POSITIVE_INFINITY);
            return new Trial(a, use, statics.settle(x, y, Load.NONE), Optional.of(weakMotor));
        }
        use.put(Criterion.SKEW, Math.abs(state.endToEnd()) / allowed.skew());
        use.put(Criterion.TOOL_ERROR, state.error().total().size() / allowed.toolError());
        use.put(Criterion.BELT_TENSION, tensionUse(state));
        double hold = teeth.leastMargin(statics.kernel());
        use.put(Criterion.TOOTH_HOLD, allowed.toothHold() == 0 ? 0 : allowed.toothHold() / hold);
        use.put(Criterion.MOTOR_TORQUE, motorUse(state, heading));
        BlockLoads b = state.blocks();
        use.put(Criterion.LEG_BLOCK_MOMENT, b.legYaw() / allowed.legMoment());
        use.put(Criterion.LEG_BLOCK_FORCE, b.legSide() / allowed.legForce());
        double carriage = Math.max(b.carriageYaw(), b.carriageTilt());
        use.put(Criterion.CARRIAGE_BLOCK_MOMENT, carriage / allowed.carriageMoment());
        use.put(Criterion.CARRIAGE_BLOCK_FORCE, b.carriageSide() / allowed.carriageForce());
        return new Trial(a, use, state, Optional.empty());
    }

    /** Loss of tension over what may be lost; 1 where the least tension is reached. */
    private double tensionUse(GantryState state) {
        double use = 0;
        for (int i = 0; i < state.tensions().size(); i++) {
            var section = statics.kernel().system().sections().get(i);
            double pretension = model.layout().belts().get(section.belt()).pretension();
            double spare = pretension - allowed.leastTension();
            double lost = pretension - state.tensions().get(i);
            if (state.tensions().get(i) <= 0) {
                use = Math.max(use, SLACK);
            }
            use =
                    Math.max(
                            use,
                            spare > 0 ? lost / spare : lost >= 0 ? Double.POSITIVE_INFINITY : 0);
        }
        return use;
    }

    private double motorUse(GantryState state, Heading heading) {
        GantryKernel k = statics.kernel();
        MotionRelation relation = k.relation();
        double use = 0;
        for (int m = 0; m < model.motors().size(); m++) {
            AxisMotor motor = model.motors().get(m);
            int axle = k.system().axle(motor.axle());
            double rate =
                    speed
                            * (relation.anglePerX(axle) * heading.x()
                                    + relation.anglePerY(axle) * heading.y());
            double available = motor.curve().at(rate);
            double needed = allowed.motorMargin() * Math.abs(state.motorTorques().get(m));
            use = Math.max(use, available > 0 ? needed / available : Double.POSITIVE_INFINITY);
        }
        return use;
    }

    private Load load(Heading heading, double a) {
        double fx = 0;
        double fy = 0;
        if (friction == FrictionCase.AGAINST_MOTION) {
            fx = Math.signum(heading.x()) * model.carriageGuide().friction();
            double rails = model.bridgeGuide().leftFriction() + model.bridgeGuide().rightFriction();
            fy = Math.signum(heading.y()) * rails;
        }
        return new Load(a * heading.x(), a * heading.y(), fx, fy, 0, 0);
    }
}
