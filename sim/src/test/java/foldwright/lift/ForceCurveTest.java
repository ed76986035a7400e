// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Demo lifts against hand figures: F = n (W + Wa/2 - S)/tan θ with pin friction by the recursion of
 * {@link HandLinkage#pinFrictionFactor}, screw by Shigley Eq. 8-5, belt 0.95. Invented machines,
 * published laws.
 */
class ForceCurveTest {
    private static ForceCurve curve(Sketch sketch) {
        return new LiftSolver(sketch.build()).curve(60);
    }

    @Test
    void vanBenchIsWorstExactlyWhereItsSpringsLetGo() {
        CurvePoint worst = curve(Sketch.vanBench()).worst().orElseThrow();
        assertThat(worst.height()).isCloseTo(.109, within(1e-9));
        assertThat(worst.margin()).isCloseTo(2.00, within(.01));
        assertThat(worst.footForce()).isCloseTo(387, within(2.0));
    }

    @ParameterizedTest
    @CsvSource({
        "34.0, 226, .082",
        "68, 353, .127",
        "101, 384, .139",
        "133, 309, .111",
        "194, 192, .069",
        "273, 109, .039"
    })
    void vanBenchNeedsTheHandForceAndTorque(double mm, double force, double torque) {
        var solver = new LiftSolver(Sketch.vanBench().build());
        double height = Math.max(solver.lowest(), Math.min(solver.highest(), mm * 1e-3));
        CurvePoint p = solver.point(height, Direction.RAISING).orElseThrow();
        assertThat(p.footForce()).isCloseTo(force, within(.015 * force));
        // The table prints whole millinewton metres: half a digit on top of 1.5 %.
        assertThat(p.motor().needed()).isCloseTo(torque, within(.015 * torque + .0005));
    }

    @Test
    void areaUnderTheFrictionlessCurveIsTheEnergyOfTheRise() {
        Sketch free = Sketch.vanBench();
        free.pinFriction = 0;
        free.guideFriction = 0;
        ForceCurve curve = new LiftSolver(free.build()).curve(400);
        double area = 0;
        List<CurvePoint> points = curve.raising();
        for (int i = 1; i < points.size(); i++) {
            CurvePoint a = points.get(i - 1);
            CurvePoint b = points.get(i);
            double dx = b.at().footTravel() - a.at().footTravel();
            area += dx * (a.footForce() + b.footForce()) / 2;
        }
        double rise = points.get(points.size() - 1).height() - points.get(0).height();
        double springs =
                new HandSprings(4, 155, .115).energy(points.get(0).height() + .006).value();
        double byHand = (5.2 + .45) * 9.81 * rise - springs;
        assertThat(byHand).as("height energy less spring energy").isCloseTo(11.52, within(.01));
        assertThat(area).isCloseTo(byHand, within(2e-4 * byHand));
    }

    @Test
    void residualAtFlatIsWhatTheSpringsLeave() {
        assertThat(curve(Sketch.vanBench()).raising().get(0).residualLoad())
                .isCloseTo(8.9, within(.05));
    }

    @Test
    void vanBenchThatBindsStallsOverTheLowestPart() {
        ForceCurve curve = curve(Sketch.vanBenchThatBinds());
        Finding stall = curve.findings(Finding.Kind.STALLS).stream().findFirst().orElseThrow();
        assertThat(stall.from()).isCloseTo(.034, within(1e-4));
        assertThat(stall.to()).isCloseTo(.099, within(.002));
        assertThat(curve.raising().get(0).motor().needed()).isCloseTo(1.30, within(.03));
        Finding lock = curve.findings(Finding.Kind.PINS_LOCK).stream().findFirst().orElseThrow();
        assertThat(lock.sentence())
                .startsWith("stage 1 locks below h = 4.8 mm however hard it is driven");
    }

    /**
     * The height of a stage, pin above pin, at which friction circles of radius mu r on all its
     * pins lock it: 4 mu r (closed form of the weightless stage; {@link PlanePinSolutionTest} has
     * the same from free bodies). Friction of the guides adds up to 0.4 %, joints that squeeze a
     * little under a tenth of the weights up to 1.1 %.
     */
    @ParameterizedTest
    @CsvSource({"van-bench, .1, .003", "van-bench-binds, .3, .004", "class-plotter, .12, .003"})
    void pinsLockAtFourTimesTheFrictionRadius(String scene, double friction, double radius)
            throws BadMachineFile {
        Machine machine = MachineFile.read(Path.of("../scenes", scene + ".json")).machine();
        Finding lock =
                new LiftSolver(machine)
                        .curve(20).findings(Finding.Kind.PINS_LOCK).stream()
                                .findFirst()
                                .orElseThrow();
        double byHand = HandLinkage.lockHeight(friction, radius).value();
        assertThat(byHand).isCloseTo(4 * friction * radius, within(1e-12));
        assertThat(lock.value()).isCloseTo(byHand, within(.015 * byHand));
        assertThat(lock.to() / lock.value())
                .as("stages")
                .isCloseTo(machine.lift().stages(), within(1e-6));
    }

    /** One change at a time on the lift that binds: margin at its worst height. */
    @ParameterizedTest
    @CsvSource({
        "'', .22",
        "bushes, .36",
        "bushes rollers, .36",
        "3:1, .32",
        "bushes rollers 3:1, .54",
        "springs, 1.13",
        "springs bushes rollers, 1.35",
        "springs bushes rollers 3:1, 2.02"
    })
    void curesGiveTheMarginsOfTheHandTable(String cures, double margin) {
        Sketch s = Sketch.vanBenchThatBinds();
        if (cures.contains("bushes")) {
            s.pinFriction = .10;
            s.pinDiameter = .006;
        }
        if (cures.contains("rollers")) {
            s.guideFriction = .005;
        }
        if (cures.contains("3:1")) {
            s.reduction = 3;
        }
        if (cures.contains("4.5:1")) {
            s.reduction = 4.5;
        }
        if (cures.contains("springs")) {
            s.liftingCoils(155);
        }
        assertThat(curve(s).worst().orElseThrow().margin()).isCloseTo(margin, within(.05 * margin));
    }

    /** Spring rate 30 % up: 5.0 N net upward at flat, the nut changes flank at 40 mm. */
    @Test
    void tooStrongSpringsPopTheDeckOpenAndTurnTheNut() {
        Sketch s = new Sketch();
        s.liftingCoils(201.5);
        ForceCurve curve = curve(s);
        Finding pops = curve.findings(Finding.Kind.POPS_OPEN).get(0);
        assertThat(pops.value()).isCloseTo(5.0, within(.1));
        assertThat(curve.findings(Finding.Kind.NUT_LOAD_REVERSES))
                .anySatisfy(f -> assertThat(f.from()).isCloseTo(.040, within(.001)));
    }

    @Test
    void sharesAddUpToTheWhole() {
        for (Sketch s : List.of(Sketch.vanBench(), Sketch.classPlotter(), Sketch.fieldPrinter())) {
            ForceCurve curve = curve(s);
            for (Direction way : Direction.values()) {
                for (CurvePoint p : curve.points(way)) {
                    assertThat(p.footShares().total())
                            .isCloseTo(p.footForce(), within(1e-9 * Math.abs(p.footForce())));
                    assertThat(p.motorShares().total())
                            .isCloseTo(p.motor().needed(), within(1e-6 * p.motor().available()));
                    assertThat(Math.abs(p.footShares().of(Cause.WIND_UP))).isLessThan(.01);
                }
            }
        }
    }

    /** A push 20 mm above a guide 20 mm long locks from 1/(2 * 1) = 0.5 on; common 2:1 rule. */
    @Test
    void anOffsetPushOnAShortGuideJams() {
        Sketch s = Sketch.vanBench();
        s.guideLength = .02;
        s.pushOffset = .02;
        s.guideFriction = .6;
        ForceCurve curve = curve(s);
        assertThat(curve.raising()).isEmpty();
        assertThat(curve.findings(Finding.Kind.GUIDE_JAMS)).hasSize(1);
        s.guideFriction = .3;
        assertThat(curve(s).raising()).isNotEmpty();
    }

    @Test
    void poseNamesEveryPartOnce() {
        LiftPose pose = new LiftSolver(Sketch.vanBench().build()).pose(.1, Direction.RAISING);
        assertThat(pose.findBody(LiftNames.deck()).orElseThrow().at().z())
                .isCloseTo(.1, within(1e-5));
        assertThat(pose.findLoad("lifting coils 1", LiftPose.LoadKind.SPRING_FORCE).orElseThrow())
                .isCloseTo(155 * (.115 - .106), within(1e-3));
        assertThat(pose.findLoad("front centre pin 1", LiftPose.LoadKind.PIN_FORCE)).isPresent();
    }

    /**
     * Two screws half a turn apart on sides tied by deck and bar fight each other, not the load.
     */
    @Test
    void aScrewHalfATurnAheadLoadsBothAgainstEachOther() {
        Sketch s = Sketch.vanBench();
        s.footBar = true;
        s.pinStiffness = java.util.OptionalDouble.of(8e6);
        double level =
                new LiftSolver(s.build())
                        .point(.1, Direction.RAISING)
                        .orElseThrow()
                        .screw()
                        .force();
        s.phase = new double[] {Math.PI, 0};
        double fight =
                new LiftSolver(s.build())
                        .point(.1, Direction.RAISING)
                        .orElseThrow()
                        .screw()
                        .force();
        assertThat(Math.abs(fight)).isGreaterThan(3 * Math.abs(level));
    }
}
