// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.Linkage.PinPart;
import foldwright.machine.part.Point;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.MovingBalance;
import foldwright.mechanics.solve.Statics;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The lift in 3D with both sides and all redundant joints against the free-body solution of one
 * plane that carries half the load ({@link PlanePinSolution}, itself held against published
 * relations).
 *
 * <p>Ideal pins give by 1e-10 m/N; a deck of 0.5 kg keeps what that does to the shape below the
 * tolerance.
 */
class LiftStaticsTest {
    private static final double G = 9.81;

    @ParameterizedTest
    @CsvSource({
        "1, 20, .25",
        "2, 20, .7",
        "3, 20, .25",
        "4, 20, .5",
        "1, 46, .8",
        "2, 46, .2",
        "3, 35, .65",
        "4, 46, .25"
    })
    void everyPinForceIsThatOfTheFreeBodies(int n, double deg, double at) {
        double angle = Math.toRadians(deg);
        Sketch sketch = offCentre(n, angle, at);
        LiftModel model = new LiftModel(sketch.build(), Give.IDEAL);
        State s = model.mechanism().start();
        Scissor.Shape shape = model.scissor().at(angle);
        model.pose(s, shape);
        s.time = shape.height();
        Equilibrium e = new Statics(model.mechanism()).frictionless(s);
        assertThat(e.found()).isTrue();
        var plane = new PlanePinSolution(plane(sketch, at), angle, 1);
        double foot = model.screws().get(0).raisingForce(e.load(model.screws().get(0).row()));
        assertThat(foot).isCloseTo(plane.footForce(), within(1e-6 * plane.footForce()));
        for (PinPart pin : model.linkage().pins()) {
            double[] f = planeForce(plane, pin);
            double size = Math.hypot(f[0], f[1]);
            assertThat(force(e, pin)).as(pin.name()).isCloseTo(size, within(1e-6 * size));
        }
    }

    /** Friction circle at every pin, rolling friction under every slider, arm weight mid-arm. */
    @ParameterizedTest
    @CsvSource({
        "1, 5.13, .1, .006, .005, .5, 1",
        "2, 5.13, .1, .006, .005, .3, 1",
        "2, 5.13, .3, .008, .15, .5, 1",
        "3, 7.86, .3, .008, .005, .7, 1",
        "4, 20, .1, .006, .005, .5, 1",
        "2, 5.13, .1, .006, .005, .5, -1",
        "3, 30, .3, .008, .1, .4, -1"
    })
    void withFrictionTheFootForceIsThatOfTheFullPinSolution(
            int n, double deg, double mu, double d, double guide, double at, int way) {
        double angle = Math.toRadians(deg);
        Sketch sketch = offCentre(n, angle, at);
        sketch.flat = angle;
        sketch.pinFriction = mu;
        sketch.pinDiameter = d;
        sketch.guideFriction = guide;
        // A long guide takes the friction moment of its pin without pressing on its ends.
        sketch.guideLength = 1;
        LiftModel model = new LiftModel(sketch.build(), Give.IDEAL);
        MovingBalance b = new MovingLift(model).passing(model.scissor().at(angle), way * .004);
        assertThat(b.outcome()).isEqualTo(MovingBalance.Outcome.BALANCED);
        var friction = new PlaneLift.Friction(mu, d / 2, guide, guide);
        var plane = new PlanePinSolution(plane(sketch, at).with(friction), angle, way);
        ScrewPart screw = model.screws().get(0);
        assertThat(screw.raisingForce(b.balance().load(screw.row())))
                .isCloseTo(plane.footForce(), within(2e-3 * Math.abs(plane.footForce())));
        for (PinPart pin : model.linkage().pins()) {
            double[] f = planeForce(plane, pin);
            double size = Math.hypot(f[0], f[1]);
            assertThat(force(b.balance(), pin)).as(pin.name()).isCloseTo(size, within(4e-3 * size));
        }
    }

    private static Sketch offCentre(int n, double angle, double at) {
        Sketch sketch = new Sketch();
        sketch.stages = n;
        sketch.deckMass = .5;
        sketch.armMass = .02;
        double span = sketch.arm * Math.cos(angle);
        sketch.deckAt = Optional.of(new Point(at * span, 0, 0));
        return sketch;
    }

    private static PlaneLift plane(Sketch sketch, double at) {
        return PlaneLift.plain(
                sketch.stages, sketch.arm, sketch.armMass * G, sketch.deckMass * G / 2, at);
    }

    private static double force(Equilibrium e, PinPart pin) {
        return Math.hypot(e.load(pin.joint(), Freedom.TX), e.load(pin.joint(), Freedom.TY));
    }

    static double[] planeForce(PlanePinSolution plane, PinPart pin) {
        return switch (pin.place()) {
            case BASE_FIXED -> plane.leftFoot();
            case BASE_SLIDER -> plane.rightFoot();
            case CENTRE -> plane.centre(pin.row());
            case JUNCTION ->
                    pin.end() == Linkage.End.FIXED ? plane.left(pin.row()) : plane.right(pin.row());
            case DECK_FIXED -> plane.deckPin();
            case DECK_SLIDER -> plane.deckSlider();
        };
    }
}
