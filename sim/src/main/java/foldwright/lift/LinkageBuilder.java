// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.ArmPart;
import foldwright.lift.Linkage.End;
import foldwright.lift.Linkage.PinPart;
import foldwright.lift.Linkage.SliderPart;
import foldwright.machine.Machine;
import foldwright.machine.linkage.ArmName;
import foldwright.machine.linkage.CrossBar;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.Side;
import foldwright.machine.linkage.SliderEnd;
import foldwright.machine.linkage.SliderLevel;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts arms, deck, sliding ends and pins of a machine into a mechanism, at one opening.
 *
 * <p>Both arms of a cross lie in the middle plane of their side; the side offset of their planes is
 * left out. Pins and guides carry the stiffness the machine file states and are ideal otherwise.
 */
final class LinkageBuilder {
    /**
     * Mass of a sliding end [kg] and its size [m]. Files state its weight with the arms or the
     * deck: the mass at the deck is taken off the deck, the weight at the base is carried.
     */
    static final double SLIDER_MASS = 0.02;

    private static final Vec3 SLIDER_SIZE = new Vec3(.04, .03, .03);

    private static final Rotation PIN_AXES = Rotation.frame(Vec3.Y, Vec3.X);
    private static final Rotation GUIDE_AXES = Rotation.frame(Vec3.X, Vec3.Y);

    private final Machine machine;
    private final Lift lift;
    private final Scissor.Shape shape;
    private final Mechanism mechanism;
    private final Give give;
    private final List<ArmPart> arms = new ArrayList<>();
    private final List<PinPart> pins = new ArrayList<>();
    private final List<SliderPart> sliders = new ArrayList<>();
    private Body deck;

    LinkageBuilder(Machine machine, Scissor.Shape shape, Mechanism mechanism, Give give) {
        this.machine = machine;
        this.lift = machine.lift();
        this.shape = shape;
        this.mechanism = mechanism;
        this.give = give;
    }

    Linkage build() {
        deck = mechanism.body(LiftNames.deck(), LiftPlaces.deck(lift, shape), DeckMass.of(machine));
        addSliders(SliderLevel.BASE);
        addSliders(SliderLevel.DECK);
        for (Side side : Side.values()) {
            for (int k = 1; k <= lift.stages(); k++) {
                addArm(side, k, ArmName.FROM_FIXED_END);
                addArm(side, k, ArmName.FROM_SLIDER_END);
            }
            addPins(side);
        }
        Linkage linkage = new Linkage(deck, arms, pins, sliders);
        for (CrossBar bar : lift.crossBars()) {
            addBar(bar, linkage);
        }
        return linkage;
    }

    private double y(Side side) {
        return LiftPlaces.y(lift, side);
    }

    private void addArm(Side side, int stage, ArmName kind) {
        double length = lift.arm().length();
        double depth = lift.arm().section().depth();
        MassProperties mass =
                MassProperties.block(
                        lift.arm().massEach(),
                        new Vec3(length / 2, 0, 0),
                        new Vec3(length + depth, lift.arm().section().width(), depth));
        LiftNames.Side of = LiftNames.Side.of(side);
        String name =
                kind == ArmName.FROM_FIXED_END
                        ? LiftNames.risingArm(of, stage)
                        : LiftNames.fallingArm(of, stage);
        Body body = mechanism.body(name, LiftPlaces.arm(lift, shape, side, stage, kind), mass);
        arms.add(new ArmPart(name, side, stage, kind, body, lift.arm()));
    }

    private Body arm(Side side, int stage, ArmName kind) {
        for (ArmPart a : arms) {
            if (a.side() == side && a.stage() == stage && a.kind() == kind) {
                return a.body();
            }
        }
        throw new IllegalStateException("arm not built yet");
    }

    private boolean hasBar(SliderLevel level) {
        PinPlace place = level == SliderLevel.BASE ? PinPlace.BASE_SLIDER : PinPlace.DECK_SLIDER;
        return lift.crossBars().stream().anyMatch(bar -> bar.at() == place);
    }

    private void addSliders(SliderLevel level) {
        if (hasBar(level)) {
            String bar = level == SliderLevel.BASE ? "foot slider bar" : "deck slider bar";
            addSlider(level, bar, 0, List.of(y(Side.FRONT), y(Side.BACK)));
            return;
        }
        for (Side side : Side.values()) {
            LiftNames.Side of = LiftNames.Side.of(side);
            String name =
                    level == SliderLevel.BASE ? LiftNames.footSlider(of) : LiftNames.deckSlider(of);
            addSlider(level, name, y(side), List.of(y(side)));
        }
    }

    private void addSlider(SliderLevel level, String name, double y, List<Double> guidesAt) {
        boolean base = level == SliderLevel.BASE;
        SliderEnd end = base ? lift.sliders().base() : lift.sliders().atDeck();
        Body carrier = base ? mechanism.base() : deck;
        Vec3 at = LiftPlaces.slider(lift, shape, level, y);
        Body body =
                mechanism.body(
                        name,
                        Pose.at(at),
                        MassProperties.block(SLIDER_MASS, Vec3.ZERO, SLIDER_SIZE));
        carry(name, body);
        List<PairJoint> guides = new ArrayList<>();
        List<Friction> frictions = new ArrayList<>();
        for (double guideY : guidesAt) {
            Vec3 point = new Vec3(at.x(), guideY, at.z());
            String guide = guidesAt.size() == 1 ? name : name + (guideY < 0 ? " front" : " back");
            PairJoint joint =
                    mechanism.joint(
                            guide + " guide",
                            JointKind.PRISMATIC,
                            carrier,
                            body,
                            new Pose(point, GUIDE_AXES));
            give.guide(joint, end);
            guides.add(joint);
            frictions.add(
                    mechanism.friction(
                            guide + " friction",
                            mechanism.travel(carrier, body, point, Vec3.X),
                            FrictionBound.guide(joint, end.friction(), end.guideLength()),
                            give.slideBristle()));
        }
        sliders.add(new SliderPart(name, level, y, body, end, guides, frictions));
    }

    private void carry(String name, Body body) {
        mechanism
                .load(name + " carried", body.marker(Vec3.ZERO))
                .force(mechanism.gravity().times(-SLIDER_MASS));
    }

    private void addPins(Side side) {
        int n = lift.stages();
        ArmName up = ArmName.FROM_FIXED_END;
        ArmName down = ArmName.FROM_SLIDER_END;
        Body foot = slider(SliderLevel.BASE, side);
        Body top = slider(SliderLevel.DECK, side);
        boolean over = LiftPlaces.deckFixedOverFixedEnd(lift);
        pin(new Spot(PinPlace.BASE_FIXED, side, 0, End.FIXED), mechanism.base(), arm(side, 1, up));
        pin(new Spot(PinPlace.BASE_SLIDER, side, 0, End.SLIDER), foot, arm(side, 1, down));
        for (int k = 1; k <= n; k++) {
            pin(
                    new Spot(PinPlace.CENTRE, side, k, End.FIXED),
                    arm(side, k, down),
                    arm(side, k, up));
            if (k < n) {
                pin(
                        new Spot(PinPlace.JUNCTION, side, k, End.FIXED),
                        arm(side, k + 1, up),
                        arm(side, k, down));
                pin(
                        new Spot(PinPlace.JUNCTION, side, k, End.SLIDER),
                        arm(side, k + 1, down),
                        arm(side, k, up));
            }
        }
        End fixed = over ? End.FIXED : End.SLIDER;
        End slides = over ? End.SLIDER : End.FIXED;
        pin(new Spot(PinPlace.DECK_FIXED, side, n, fixed), deck, arm(side, n, over ? down : up));
        pin(new Spot(PinPlace.DECK_SLIDER, side, n, slides), top, arm(side, n, over ? up : down));
    }

    private Body slider(SliderLevel level, Side side) {
        for (SliderPart s : sliders) {
            if (s.level() == level && (s.y() == 0 || s.y() == y(side))) {
                return s.body();
            }
        }
        throw new IllegalStateException("slider not built yet");
    }

    /** Where a pin sits: row 0..n of the nodes, or the stage of a centre pin. */
    private record Spot(PinPlace place, Side side, int row, End end) {
        String name() {
            LiftNames.Side of = LiftNames.Side.of(side);
            if (place == PinPlace.CENTRE) {
                return LiftNames.centrePin(of, row);
            }
            return end == End.FIXED ? LiftNames.fixedPin(of, row) : LiftNames.slidingPin(of, row);
        }
    }

    private void pin(Spot spot, Body a, Body b) {
        Vec3 at =
                spot.place == PinPlace.CENTRE
                        ? LiftPlaces.centre(lift, shape, spot.side, spot.row)
                        : LiftPlaces.node(lift, shape, spot.side, spot.row, spot.end);
        Pin pin = lift.pinAt(spot.place);
        PairJoint joint =
                mechanism.joint(spot.name(), JointKind.REVOLUTE, a, b, new Pose(at, PIN_AXES));
        give.pin(joint, pin);
        Friction friction =
                mechanism.friction(
                        spot.name() + " friction",
                        mechanism.angle(a, b, Vec3.Y),
                        FrictionBound.pin(joint, pin.bearing().friction(), pin.radius()),
                        give.turnBristle());
        pins.add(
                new PinPart(
                        spot.name(),
                        spot.place,
                        spot.side,
                        spot.end,
                        spot.row,
                        pin,
                        joint,
                        friction));
    }

    /** A through bar holds the pins of both sides on one line, as stiffly as it bends. */
    private void addBar(CrossBar bar, Linkage linkage) {
        for (PinPart front : linkage.pins()) {
            boolean here =
                    front.side() == Side.FRONT
                            && front.place() == bar.at()
                            && (bar.at() != PinPlace.CENTRE && bar.at() != PinPlace.JUNCTION
                                    || front.row() == bar.stage());
            boolean needless =
                    bar.at() == PinPlace.BASE_FIXED
                            || bar.at() == PinPlace.BASE_SLIDER
                            || bar.at() == PinPlace.DECK_SLIDER
                            || bar.at() == PinPlace.DECK_FIXED;
            if (here && !needless) {
                tie(bar, front, twin(linkage, front));
            }
        }
    }

    private PinPart twin(Linkage linkage, PinPart front) {
        int at = linkage.pins().indexOf(front) + linkage.pins().size() / 2;
        return linkage.pins().get(at);
    }

    private void tie(CrossBar bar, PinPart front, PinPart back) {
        Body a = mechanism.bodies().get(front.joint().body(1));
        Body b = mechanism.bodies().get(back.joint().body(1));
        Vec3 at = middle(front, back);
        PairJoint joint =
                mechanism.joint(
                        "cross bar " + front.name().replace("front ", ""),
                        JointKind.GROOVE,
                        a,
                        b,
                        new Pose(at, PIN_AXES));
        double span = lift.width();
        double bending =
                span
                        * span
                        * span
                        / (12 * bar.material().youngsModulus() * bar.section().inPlaneMoment());
        joint.soften(joint.row(Freedom.TX), bending, 0);
        joint.soften(joint.row(Freedom.TY), bending, 0);
    }

    private Vec3 middle(PinPart front, PinPart back) {
        Vec3 a = LiftPlaces.of(lift, shape, front);
        Vec3 b = LiftPlaces.of(lift, shape, back);
        return a.plus(b).times(0.5);
    }
}
