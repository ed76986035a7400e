// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Base;
import foldwright.machine.Deck;
import foldwright.machine.Limits;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.Collar;
import foldwright.machine.drive.Direct;
import foldwright.machine.drive.Drive;
import foldwright.machine.drive.MotorCount;
import foldwright.machine.drive.Nut;
import foldwright.machine.drive.Screw;
import foldwright.machine.drive.ScrewEnds;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.drive.ScrewThread;
import foldwright.machine.drive.SteadyRise;
import foldwright.machine.drive.StepperDrive;
import foldwright.machine.linkage.Arm;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.ArmPlanes;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.CrossBar;
import foldwright.machine.linkage.DeckEnd;
import foldwright.machine.linkage.Latch;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.OpeningRange;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.Pins;
import foldwright.machine.linkage.SliderEnd;
import foldwright.machine.linkage.SliderKind;
import foldwright.machine.linkage.Sliders;
import foldwright.machine.linkage.Stop;
import foldwright.machine.linkage.Travel;
import foldwright.machine.part.Carrier;
import foldwright.machine.part.Material;
import foldwright.machine.part.Point;
import foldwright.machine.part.PointMass;
import foldwright.machine.part.PullOutPoint;
import foldwright.machine.part.PullOutPoints;
import foldwright.machine.part.Rectangle;
import foldwright.machine.part.Round;
import foldwright.machine.part.Spot;
import foldwright.machine.part.Stepper;
import foldwright.machine.part.Teeth;
import foldwright.machine.spring.AtFoot;
import foldwright.machine.spring.AtPins;
import foldwright.machine.spring.Contact;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.TorsionAtFlat;
import foldwright.machine.spring.Upright;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A lift in the making for tests: starts as the two-stage van bench without springs. */
final class Sketch {
    static final Material ALUMINIUM =
            new Material("aluminium", 70e9, 26e9, 2700, OptionalDouble.of(250e6));
    static final Material STEEL =
            new Material("steel", 206e9, 81.5e9, 7850, OptionalDouble.of(250e6));

    int stages = 2;
    double arm = .190;
    double armMass = .1125;
    double centrePin = .5;
    double flat = Math.toRadians(5.13);
    double open = Math.toRadians(46);
    double width = .28;
    double pinFriction = .10;
    double pinDiameter = .006;
    OptionalDouble pinStiffness = OptionalDouble.empty();
    double guideFriction = .005;
    double guideLength = .024;
    double pushOffset = 0;
    DeckEnd deckFixed = DeckEnd.OVER_FIXED_END;
    double deckMass = 5.20;
    Optional<Point> deckAt = Optional.empty();
    String thread = "Tr10x2";
    double threadFriction = .15;
    double collarFriction = 0;
    double[] screwsAt = {-.14, .14};
    double[] phase = {0, 0};
    boolean footBar = false;
    double reduction = 3;
    double pullOut = .28;
    double fastest = 4;
    double rotorInertia = 58e-7;
    double detent = .015;
    double holding = .40;
    MotorCount motors = MotorCount.ONE_FOR_ALL;
    double rise = .004;
    OptionalDouble endStiffness = OptionalDouble.empty();
    Optional<Latch> latch = Optional.empty();
    final List<HelperSpring> springs = new ArrayList<>();
    final List<Stop> stops = new ArrayList<>();

    /** Two stages, four upright coils, bronze bushes, two Tr10x2 screws behind a 3:1 belt. */
    static Sketch vanBench() {
        Sketch s = new Sketch();
        s.liftingCoils(155);
        return s;
    }

    /** The same as first built: no springs, printed bushes, plain feet, 2:1. */
    static Sketch vanBenchThatBinds() {
        Sketch s = new Sketch();
        s.pinFriction = .30;
        s.pinDiameter = .008;
        s.guideFriction = .15;
        s.reduction = 2;
        return s;
    }

    /** One stage, two die springs at the foot bar, one Tr8x2 screw, direct. */
    static Sketch classPlotter() {
        Sketch s = new Sketch();
        s.stages = 1;
        s.arm = .255;
        s.armMass = .70 / 4;
        s.flat = Math.toRadians(4.20);
        s.open = Math.toRadians(20);
        s.width = .44;
        s.pinFriction = .12;
        s.guideFriction = .004;
        s.deckMass = 3.60;
        s.thread = "Tr8x2";
        s.screwsAt = new double[] {0};
        s.phase = new double[] {0};
        s.footBar = true;
        s.reduction = 1;
        s.pullOut = .33;
        s.fastest = 3;
        s.rise = .006;
        s.springs.add(
                new HelperSpring(
                        "die springs",
                        new RatedCoil(
                                36e3,
                                .040,
                                .025,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                "hard drawn A227"),
                        new AtFoot(List.of(-.02, .02), .005),
                        Contact.TOUCHING,
                        OptionalDouble.empty()));
        return s;
    }

    /** Three stages, torsion springs at the base pins, two Tr8x2 screws with a motor each. */
    static Sketch fieldPrinter() {
        Sketch s = new Sketch();
        s.stages = 3;
        s.arm = .095;
        s.armMass = .45 / 12;
        s.flat = Math.toRadians(7.86);
        s.open = Math.toRadians(52);
        s.width = .18;
        s.pinFriction = .01;
        s.pinDiameter = .005;
        s.deckMass = 1.90;
        s.thread = "Tr8x2";
        s.screwsAt = new double[] {-.09, .09};
        s.reduction = 1;
        s.pullOut = .10;
        s.fastest = 3;
        s.holding = .14;
        s.rotorInertia = 20e-7;
        s.motors = MotorCount.ONE_PER_SCREW;
        s.rise = .005;
        s.springs.add(
                new HelperSpring(
                        "torsion springs",
                        new TorsionAtFlat(
                                1.10,
                                OptionalDouble.of(.0025),
                                OptionalDouble.of(.016),
                                OptionalDouble.of(5),
                                "hard drawn A227"),
                        new AtPins(
                                List.of(PinPlace.BASE_FIXED, PinPlace.BASE_SLIDER),
                                Math.toRadians(50)),
                        Contact.TOUCHING,
                        OptionalDouble.empty()));
        return s;
    }

    /** Four upright springs of that rate [N/m] with 6 mm more room than the deck pins are high. */
    void liftingCoils(double rate) {
        liftingCoils(rate, .115);
    }

    /** The same with another free length [m]. */
    void liftingCoils(double rate, double free) {
        springs.add(
                new HelperSpring(
                        "lifting coils",
                        new RatedCoil(
                                rate,
                                free,
                                .028,
                                OptionalDouble.of(.0016),
                                OptionalDouble.of(.030),
                                "hard drawn A227"),
                        new Upright(
                                List.of(
                                        new Spot(.04, -.09),
                                        new Spot(.04, .09),
                                        new Spot(.12, -.09),
                                        new Spot(.12, .09)),
                                .006),
                        Contact.TOUCHING,
                        OptionalDouble.of(.024)));
    }

    Machine build() {
        return new Machine(
                "test lift",
                Optional.empty(),
                List.of(),
                List.of(),
                new Base(.42, .34, .022, .04, 4.6, Optional.empty(), OptionalDouble.of(.030)),
                new Deck(
                        .4,
                        .34,
                        .04,
                        .038,
                        .006,
                        List.of(new PointMass("deck", deckMass, deckAt, Carrier.WITH_DECK))),
                lift(),
                drive(),
                springs,
                stops,
                latch,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Limits(
                        1.5,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                List.of(),
                Optional.empty());
    }

    private Lift lift() {
        Pin pin =
                new Pin(
                        pinDiameter,
                        new Bush(pinFriction, 0, .008, OptionalDouble.of(14e6), "bronze"),
                        .014,
                        pinStiffness,
                        OptionalDouble.empty(),
                        0);
        SliderEnd end =
                new SliderEnd(
                        SliderKind.ROLLERS,
                        guideFriction,
                        guideLength,
                        pushOffset,
                        0,
                        OptionalDouble.empty());
        List<CrossBar> bars =
                footBar
                        ? List.of(new CrossBar(PinPlace.BASE_SLIDER, 1, new Round(.01), STEEL))
                        : List.of();
        return new Lift(
                stages,
                width,
                new Arm(
                        arm,
                        new Rectangle(.016, .006),
                        ALUMINIUM,
                        centrePin,
                        ArmPlanes.SHARED,
                        OptionalDouble.of(armMass),
                        OptionalDouble.empty()),
                new Pins(pin, List.of()),
                new Sliders(end, Optional.empty(), deckFixed),
                bars,
                new Travel(
                        new OpeningRange(new ArmAngle(flat), new ArmAngle(open)),
                        Optional.empty()));
    }

    private Drive drive() {
        List<ScrewLine> lines = new ArrayList<>();
        for (int i = 0; i < screwsAt.length; i++) {
            lines.add(new ScrewLine(screwsAt[i], phase[i], Optional.empty(), Optional.empty()));
        }
        return new Drive(
                new Screw(
                        thread(),
                        new Nut(
                                threadFriction,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                .015,
                                0,
                                OptionalDouble.of(5e6)),
                        new Collar(collarFriction, .012),
                        .15,
                        ScrewEnds.FIXED_FREE,
                        endStiffness,
                        STEEL),
                lines,
                reduction == 1
                        ? new Direct(OptionalDouble.empty())
                        : new BeltReduction(
                                new Teeth(16, (int) Math.round(16 * reduction)),
                                .95,
                                OptionalDouble.empty(),
                                .002,
                                .009),
                new StepperDrive(
                        new Stepper(
                                17,
                                200,
                                holding,
                                detent,
                                rotorInertia,
                                .28,
                                new PullOutPoints(
                                        List.of(
                                                new PullOutPoint(0, pullOut),
                                                new PullOutPoint(fastest * 2 * Math.PI, pullOut)))),
                        motors,
                        16),
                new SteadyRise(rise, .02));
    }

    private ScrewThread thread() {
        String[] size = thread.substring(2).split("x");
        double d = Double.parseDouble(size[0]) * 1e-3;
        double lead = Double.parseDouble(size[1]) * 1e-3;
        double pitch = 2e-3;
        return new ScrewThread(
                thread,
                d,
                d - pitch / 2,
                d - pitch - .5e-3,
                pitch,
                (int) Math.round(lead / pitch),
                Math.toRadians(15));
    }
}
