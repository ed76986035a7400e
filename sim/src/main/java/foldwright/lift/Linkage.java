// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.linkage.Arm;
import foldwright.machine.linkage.ArmName;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.Side;
import foldwright.machine.linkage.SliderEnd;
import foldwright.machine.linkage.SliderLevel;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.PairJoint;
import java.util.List;
import java.util.function.Predicate;

/**
 * The parts of a lift in a mechanism, by name: what results are read from.
 *
 * @param deck the deck
 * @param arms all arms, front side first, from the bottom up
 * @param pins all pins, in the same order
 * @param sliders sliding ends in base and deck
 */
record Linkage(Body deck, List<ArmPart> arms, List<PinPart> pins, List<SliderPart> sliders) {

    Linkage {
        arms = List.copyOf(arms);
        pins = List.copyOf(pins);
        sliders = List.copyOf(sliders);
    }

    /** Places every body where ideal pins would have it; velocities stay as they are. */
    void pose(State s, Lift lift, Scissor.Shape shape) {
        pose(s, lift, shape, body -> true);
        s.refresh();
    }

    /** Places those of the bodies that are among some, by their index; the others stay. */
    void pose(State s, Lift lift, Scissor.Shape shape, int[] some) {
        pose(s, lift, shape, body -> among(some, body));
    }

    private void pose(State s, Lift lift, Scissor.Shape shape, Predicate<Body> wanted) {
        if (wanted.test(deck)) {
            s.place(deck, LiftPlaces.deck(lift, shape));
        }
        for (ArmPart a : arms) {
            if (wanted.test(a.body())) {
                s.place(a.body(), LiftPlaces.arm(lift, shape, a.side(), a.stage(), a.kind()));
            }
        }
        for (SliderPart p : sliders) {
            if (wanted.test(p.body())) {
                s.place(p.body(), Pose.at(LiftPlaces.slider(lift, shape, p.level(), p.y())));
            }
        }
    }

    private static boolean among(int[] some, Body body) {
        for (int index : some) {
            if (index == body.index()) {
                return true;
            }
        }
        return false;
    }

    /** An end of a row of pins. */
    enum End {
        /** Above the fixed feet. */
        FIXED,
        /** Above the sliding feet. */
        SLIDER
    }

    /**
     * An arm. Its frame: origin at its lower pin, x towards its upper pin, y to the back.
     *
     * @param name see {@link LiftNames}
     * @param side which side
     * @param stage from 1
     * @param kind which arm of the cross
     * @param body its body
     * @param arm its description
     */
    record ArmPart(String name, Side side, int stage, ArmName kind, Body body, Arm arm) {}

    /**
     * A pin. The joint's load on its second body is the load results speak of.
     *
     * @param name see {@link LiftNames}
     * @param place where it is
     * @param side which side
     * @param end above which feet it stands; fixed for centre pins
     * @param row row of nodes: 0 at the base, n at the deck; for centre pins the stage
     * @param pin its description
     * @param joint the joint
     * @param friction its friction row
     */
    record PinPart(
            String name,
            PinPlace place,
            Side side,
            End end,
            int row,
            Pin pin,
            PairJoint joint,
            Friction friction) {}

    /**
     * A sliding end with one guide, or a bar with one guide at each side.
     *
     * @param name see {@link LiftNames}
     * @param level in base or deck
     * @param y where its origin lies across the machine [m]
     * @param body its body; frame: origin at the pin, or midway between the pins of a bar
     * @param end its description
     * @param guides one or two joints that guide it
     * @param frictions friction row of each guide
     */
    record SliderPart(
            String name,
            SliderLevel level,
            double y,
            Body body,
            SliderEnd end,
            List<PairJoint> guides,
            List<Friction> frictions) {}

    /** The arm of that place. */
    ArmPart arm(Side side, int stage, ArmName kind) {
        for (ArmPart a : arms) {
            if (a.side() == side && a.stage() == stage && a.kind() == kind) {
                return a;
            }
        }
        throw new IllegalArgumentException("no arm at stage " + stage);
    }

    /** The slider of a level nearest to a place across the machine [m]. */
    SliderPart slider(SliderLevel level, double y) {
        SliderPart nearest = null;
        for (SliderPart s : sliders) {
            boolean nearer = nearest == null || Math.abs(s.y() - y) < Math.abs(nearest.y() - y);
            if (s.level() == level && nearer) {
                nearest = s;
            }
        }
        if (nearest == null) {
            throw new IllegalArgumentException("no slider in the " + level);
        }
        return nearest;
    }
}
