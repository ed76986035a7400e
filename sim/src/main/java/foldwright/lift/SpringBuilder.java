// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.spring.SpringLaw;
import foldwright.lift.Linkage.PinPart;
import foldwright.machine.Machine;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.Side;
import foldwright.machine.linkage.SliderLevel;
import foldwright.machine.part.Spot;
import foldwright.machine.spring.AtFoot;
import foldwright.machine.spring.AtPins;
import foldwright.machine.spring.BetweenPoints;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.SpringEnds;
import foldwright.machine.spring.Upright;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Coordinate;
import java.util.ArrayList;
import java.util.List;

/** Puts the helper springs of a machine into a mechanism that stands at a given shape. */
final class SpringBuilder {
    private final Machine machine;
    private final Scissor.Shape shape;
    private final Mechanism mechanism;
    private final Linkage linkage;
    private final Anchors anchors;
    private final List<SpringPart> parts = new ArrayList<>();

    SpringBuilder(
            Machine machine,
            Scissor.Shape shape,
            Mechanism mechanism,
            Linkage linkage,
            Anchors anchors) {
        this.machine = machine;
        this.shape = shape;
        this.mechanism = mechanism;
        this.linkage = linkage;
        this.anchors = anchors;
    }

    List<SpringPart> build() {
        for (HelperSpring spring : machine.springs()) {
            if (spring.place() instanceof Upright place) {
                upright(spring, place);
            } else if (spring.place() instanceof AtFoot place) {
                atFoot(spring, place);
            } else if (spring.place() instanceof AtPins place) {
                atPins(spring, place);
            } else {
                between(spring, (BetweenPoints) spring.place());
            }
        }
        return List.copyOf(parts);
    }

    /** Length = height of the deck above this place + the stated gap. */
    private void upright(HelperSpring spring, Upright place) {
        for (Spot spot : place.at()) {
            Vec3 at = new Vec3(spot.x(), spot.y(), shape.height());
            Coordinate rise = mechanism.travel(mechanism.base(), linkage.deck(), at, Vec3.Z);
            add(spring, SpringLaws.along(spring), rise, shape.height() + place.gapAtPins(), 1);
        }
    }

    /** Squeezed by the stated amount when flat, released as the foot comes in. */
    private void atFoot(HelperSpring spring, AtFoot place) {
        SpringLaw law = SpringLaws.along(spring);
        double flat = flat().foot();
        double start = law.freeCoordinate() - place.squeezeAtFlat() + flat - shape.foot();
        double offset = machine.lift().sliders().base().pushOffset();
        for (double y : place.at()) {
            Body slider = linkage.slider(SliderLevel.BASE, y).body();
            Vec3 at = new Vec3(shape.foot(), y, offset);
            Coordinate out = mechanism.travel(mechanism.base(), slider, at, Vec3.X);
            add(spring, law, out, start, -1);
        }
    }

    private Scissor.Shape flat() {
        return new Scissor(machine.lift()).at(machine.lift().travel().fold().low());
    }

    /** Leg angle = sum of the angles of the arms at the pin. */
    private void atPins(HelperSpring spring, AtPins place) {
        for (PinPlace where : place.at()) {
            for (Side side : Side.values()) {
                PinPart pin = lowest(where, side);
                double now = legs(shape, pin);
                double free = place.freeAngle() * legCount(pin);
                SpringLaw law = SpringLaws.around(spring, free, legs(flat(), pin));
                add(spring, law, turn(pin), now, opening(pin));
            }
        }
    }

    private PinPart lowest(PinPlace where, Side side) {
        for (PinPart pin : linkage.pins()) {
            if (pin.place() == where && pin.side() == side) {
                return pin;
            }
        }
        throw new IllegalArgumentException("this lift has no pin at " + where);
    }

    private int legCount(PinPart pin) {
        return pin.place() == PinPlace.CENTRE || pin.place() == PinPlace.JUNCTION ? 2 : 1;
    }

    private double legs(Scissor.Shape at, PinPart pin) {
        return switch (pin.place()) {
            case BASE_FIXED, BASE_SLIDER -> at.angle(1);
            case CENTRE -> 2 * at.angle(pin.row());
            case JUNCTION -> at.angle(pin.row()) + at.angle(pin.row() + 1);
            case DECK_FIXED, DECK_SLIDER -> at.angle(at.stages());
        };
    }

    private Coordinate turn(PinPart pin) {
        Body a = mechanism.bodies().get(pin.joint().body(0));
        Body b = mechanism.bodies().get(pin.joint().body(1));
        return mechanism.angle(a, b, Vec3.Y);
    }

    /** +1 where the second body turns about +y against the first as the stack opens. */
    private double opening(PinPart pin) {
        boolean over = LiftPlaces.deckFixedOverFixedEnd(machine.lift());
        return switch (pin.place()) {
            case BASE_FIXED, CENTRE -> -1;
            case BASE_SLIDER -> 1;
            case JUNCTION -> pin.end() == Linkage.End.FIXED ? 1 : -1;
            case DECK_FIXED -> over ? 1 : -1;
            case DECK_SLIDER -> over ? -1 : 1;
        };
    }

    private void between(HelperSpring spring, BetweenPoints place) {
        for (SpringEnds ends : place.ends()) {
            Coordinate distance =
                    mechanism.distance(anchors.marker(ends.from()), anchors.marker(ends.to()));
            add(spring, SpringLaws.along(spring), distance, 0, 1);
        }
    }

    private void add(
            HelperSpring spring, SpringLaw law, Coordinate along, double start, double sense) {
        int number = 1;
        for (SpringPart p : parts) {
            number += p.spring() == spring ? 1 : 0;
        }
        String name = LiftNames.spring(spring.name(), number);
        parts.add(
                new SpringPart(
                        name,
                        spring,
                        law,
                        along,
                        start,
                        sense,
                        mechanism.law(name, along, SpringPart.adapt(law, start, sense))));
    }
}
