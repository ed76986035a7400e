// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.Linkage.PinPart;
import foldwright.lift.PartShares.Share;
import foldwright.lift.PartShares.Split;
import foldwright.machine.part.Point;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.State;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Statics;
import foldwright.mechanics.solve.Superposition;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Shares by cause of single pins and arms: against closed forms of one stage, against the free-body
 * solution of one plane under each cause alone ({@link PlanePinSolution}), and as parts of a whole.
 */
class PartSharesTest {
    private static final double G = 9.81;

    /**
     * One stage, weight W of one side at half the span, arms of weight w: foot force (W + w)/tan a,
     * which is all the centre pin carries; deck pins carry W/2; the arm bends by L cos a (W/4 +
     * w/8). Moments of the free arm about its centre pin (statics of rigid bodies).
     */
    @ParameterizedTest
    @CsvSource({"12", "25", "46"})
    void oneStageWithItsWeightInTheMiddleIsTheClosedForm(double deg) {
        double angle = Math.toRadians(deg);
        Sketch sketch = light(1, angle, .5);
        double w = sketch.armMass * G;
        double side = sketch.deckMass * G / 2;
        PartShares found = solve(sketch, angle);
        Split centre = found.pin("front centre pin 1").orElseThrow();
        near(of(centre, Cause.DECK), side / Math.tan(angle), centre.total());
        near(of(centre, Cause.ARMS), w / Math.tan(angle), centre.total());
        Split top = found.pin("back fixed-side pin 2").orElseThrow();
        near(of(top, Cause.DECK), side / 2, top.total());
        near(of(top, Cause.ARMS), 0, top.total());
        Split arm = found.arm("front arm 1 rising").orElseThrow();
        double lever = sketch.arm * Math.cos(angle);
        near(of(arm, Cause.DECK), lever * side / 4, arm.total());
        near(of(arm, Cause.ARMS), lever * w / 8, arm.total());
        near(arm.total(), lever * (side / 4 + w / 8), arm.total());
    }

    /** Load off the middle, one stage: the slider foot carries W a upward and W/tan a across. */
    @Test
    void aLoadOffTheMiddleGoesToItsFoot() {
        double angle = Math.toRadians(30);
        Sketch sketch = light(1, angle, .7);
        double side = sketch.deckMass * G / 2;
        double w = sketch.armMass * G;
        Split foot = solve(sketch, angle).pin("front sliding-side pin 1").orElseThrow();
        double across = 1 / Math.tan(angle);
        double whole = Math.hypot((side + w) * across, .7 * side + w);
        near(foot.total(), whole, whole);
        double deck = (side * across * (side + w) * across + .7 * side * (.7 * side + w)) / whole;
        near(of(foot, Cause.DECK), deck, whole);
        near(of(foot, Cause.ARMS), whole - deck, whole);
    }

    /** Deck, arms and springs, each alone on the plane stack, along the direction of them all. */
    @ParameterizedTest
    @CsvSource({"1, 20, .25", "2, 20, .7", "3, 20, .25", "4, 30, .5", "2, 46, .2", "3, 35, .65"})
    void everyShareOfEveryPinIsThatOfTheFreeBodiesUnderThatCauseAlone(
            int n, double deg, double at) {
        double angle = Math.toRadians(deg);
        Sketch sketch = light(n, angle, at);
        sketch.liftingCoils(3, .6);
        LiftModel model = new LiftModel(sketch.build(), Give.IDEAL);
        PartShares found = solve(sketch, angle);
        double push = springs(sketch, angle) / 2;
        double span = sketch.arm * Math.cos(angle);
        assertThat(push).as("springs push").isGreaterThan(.05);
        PlaneLift deck = plane(sketch, 0, sketch.deckMass * G / 2, at);
        PlaneLift arms = plane(sketch, sketch.armMass * G, 0, at);
        PlaneLift.Springs up = new PlaneLift.Springs(push, .08 / span, 0, 0);
        PlaneLift coils = plane(sketch, 0, 0, at).with(up);
        PlaneLift all = plane(sketch, sketch.armMass * G, sketch.deckMass * G / 2, at).with(up);
        Map<Cause, PlanePinSolution> alone =
                Map.of(
                        Cause.DECK, new PlanePinSolution(deck, angle, 1),
                        Cause.ARMS, new PlanePinSolution(arms, angle, 1),
                        Cause.SPRINGS, new PlanePinSolution(coils, angle, 1));
        PlanePinSolution whole = new PlanePinSolution(all, angle, 1);
        for (PinPart pin : model.linkage().pins()) {
            double[] f = LiftStaticsTest.planeForce(whole, pin);
            double size = Math.hypot(f[0], f[1]);
            Split split = found.pin(pin.name()).orElseThrow();
            assertThat(split.total()).as(pin.name()).isCloseTo(size, within(2e-6 * size));
            alone.forEach(
                    (cause, plane) -> {
                        double[] own = LiftStaticsTest.planeForce(plane, pin);
                        double share = (own[0] * f[0] + own[1] * f[1]) / size;
                        assertThat(of(split, cause))
                                .as(pin.name() + " " + cause)
                                .isCloseTo(share, within(3e-6 * size));
                    });
        }
        Split arm = found.arm("back arm 1 rising").orElseThrow();
        double sense = Math.signum(whole.risingArmMoment(1));
        near(of(arm, Cause.DECK), sense * alone.get(Cause.DECK).risingArmMoment(1), arm.total());
    }

    /** Friction's share is what the friction circles of the plane stack add; the rest is whole. */
    @ParameterizedTest
    @CsvSource({"1, 12, .5, 1", "2, 20, .3, 1", "3, 30, .7, 1", "2, 20, .3, -1"})
    void frictionIsWhatItAddsAndNothingIsLeft(int n, double deg, double at, int way) {
        double angle = Math.toRadians(deg);
        Sketch sketch = light(n, angle, at);
        sketch.pinFriction = .2;
        sketch.pinDiameter = .008;
        sketch.guideFriction = .05;
        sketch.guideLength = 1;
        LiftModel model = new LiftModel(sketch.build(), Give.IDEAL);
        Direction direction = way > 0 ? Direction.RAISING : Direction.LOWERING;
        PartShares found = solve(sketch, angle, direction);
        PlaneLift smooth = plane(sketch, sketch.armMass * G, sketch.deckMass * G / 2, at);
        var friction = new PlaneLift.Friction(.2, .004, .05, .05);
        PlanePinSolution rough = new PlanePinSolution(smooth.with(friction), angle, way);
        PlanePinSolution free = new PlanePinSolution(smooth, angle, way);
        for (PinPart pin : model.linkage().pins()) {
            double[] f = LiftStaticsTest.planeForce(rough, pin);
            double[] g = LiftStaticsTest.planeForce(free, pin);
            double size = Math.hypot(f[0], f[1]);
            double added = size - (g[0] * f[0] + g[1] * f[1]) / size;
            Split split = found.pin(pin.name()).orElseThrow();
            assertThat(of(split, Cause.PINS) + of(split, Cause.GUIDES))
                    .as(pin.name())
                    .isCloseTo(added, within(4e-3 * size));
            near(of(split, Cause.WIND_UP), 0, split.total());
        }
        found.arms().values().forEach(a -> near(of(a, Cause.WIND_UP), 0, a.total()));
    }

    /** One load after the other adds up to all at once, and that to the statics of the lift. */
    @Test
    void causesAddUpToAllOfThemAtOnce() {
        double angle = Math.toRadians(20);
        Sketch sketch = light(2, angle, .3);
        sketch.liftingCoils(3, .6);
        LiftModel model = new LiftModel(sketch.build(), Give.IDEAL);
        State s = model.mechanism().start();
        Scissor.Shape shape = model.scissor().at(angle);
        model.pose(s, shape);
        s.time = shape.height();
        Equilibrium free = new Statics(model.mechanism()).frictionless(s);
        Superposition loads = new Superposition(model.mechanism(), free);
        double[] whole = loads.under((at, load) -> everything(model, at, load)).multipliers();
        double[] sum = new double[whole.length];
        for (Body b : model.mechanism().bodies()) {
            add(sum, loads.under((at, load) -> weigh(b, load)).multipliers());
        }
        model.mechanism()
                .forces()
                .forEach(f -> add(sum, loads.under((at, load) -> f.apply(at, load)).multipliers()));
        double most = 0;
        for (double l : whole) {
            most = Math.max(most, Math.abs(l));
        }
        assertThat(sum).containsExactly(whole, within(1e-9 * most));
        assertThat(whole).containsExactly(free.multipliers(), within(1e-6 * most));
    }

    /** Screws that fight load pins without any load: that is no cause's share. */
    @Test
    void screwsOutOfStepAreAShareOfTheirOwn() {
        Sketch sketch = Sketch.vanBench();
        sketch.pinStiffness = java.util.OptionalDouble.of(8e6);
        sketch.phase = new double[] {0, Math.toRadians(20)};
        LiftSolver solver = new LiftSolver(sketch.build());
        PartShares fighting = solver.shares(.1, Direction.RAISING).orElseThrow();
        double size = 0;
        for (Split pin : fighting.pins().values()) {
            near(pin.shares().stream().mapToDouble(Share::value).sum(), pin.total(), pin.total());
            size = Math.max(size, Math.abs(of(pin, Cause.WIND_UP)) / pin.total());
        }
        assertThat(size).isGreaterThan(.02);
    }

    /** Values and shares are those of the force curve's point. */
    @Test
    void wholesAreThoseOfTheForceCurve() {
        LiftSolver solver = new LiftSolver(Sketch.vanBenchThatBinds().build());
        CurvePoint point = solver.point(.1, Direction.RAISING).orElseThrow();
        PartShares shares = solver.shares(.1, Direction.RAISING).orElseThrow();
        for (PinLoad pin : point.parts().pins()) {
            near(shares.pin(pin.pin()).orElseThrow().total(), pin.force(), pin.force());
        }
        for (ArmLoad arm : point.parts().arms()) {
            near(shares.arm(arm.arm()).orElseThrow().total(), arm.bending(), arm.bending());
        }
    }

    private static void everything(LiftModel model, State s, double[] load) {
        model.mechanism().bodies().forEach(b -> weigh(b, load));
        model.mechanism().forces().forEach(f -> f.apply(s, load));
    }

    private static void weigh(Body b, double[] load) {
        load[6 * b.index() + 2] -= b.isBase() ? 0 : b.mass().mass() * G;
    }

    private static void add(double[] sum, double[] more) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
    }

    private static void near(double found, double wanted, double whole) {
        assertThat(found).isCloseTo(wanted, within(2e-6 * whole));
    }

    private static double of(Split split, Cause cause) {
        return split.shares().stream()
                .filter(s -> s.cause() == cause)
                .mapToDouble(Share::value)
                .sum();
    }

    /** Frictionless, light enough that the give of ideal pins does not change the shape. */
    private static Sketch light(int n, double angle, double at) {
        Sketch sketch = new Sketch();
        sketch.stages = n;
        sketch.flat = angle;
        sketch.deckMass = .5;
        sketch.armMass = .02;
        sketch.pinFriction = 0;
        sketch.guideFriction = 0;
        sketch.deckAt = Optional.of(new Point(at * sketch.arm * Math.cos(angle), 0, 0));
        return sketch;
    }

    private static PlaneLift plane(Sketch sketch, double armWeight, double load, double at) {
        return PlaneLift.plain(sketch.stages, sketch.arm, armWeight, load, at);
    }

    private static PartShares solve(Sketch sketch, double angle) {
        return solve(sketch, angle, Direction.RAISING);
    }

    private static PartShares solve(Sketch sketch, double angle, Direction way) {
        LiftSolver solver = new LiftSolver(sketch.build());
        double height = sketch.stages * sketch.arm * Math.sin(angle);
        return solver.shares(height, way).orElseThrow();
    }

    private static double springs(Sketch sketch, double angle) {
        double height = sketch.stages * sketch.arm * Math.sin(angle);
        return new LiftSolver(sketch.build())
                .point(height, Direction.RAISING).orElseThrow().parts().springs().stream()
                        .mapToDouble(SpringLoad::force)
                        .sum();
    }
}
