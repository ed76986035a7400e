// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.End;
import foldwright.lift.Linkage.PinPart;
import foldwright.machine.linkage.ArmName;
import foldwright.machine.linkage.DeckEnd;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.Side;
import foldwright.machine.linkage.SliderLevel;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.Vec3;

/** Where the parts of a lift stand at an opening, in the base frame. */
final class LiftPlaces {
    private LiftPlaces() {}

    /** Middle plane of a side [m]. */
    static double y(Lift lift, Side side) {
        return side == Side.FRONT ? -lift.width() / 2 : lift.width() / 2;
    }

    static boolean deckFixedOverFixedEnd(Lift lift) {
        return lift.sliders().deckFixed() == DeckEnd.OVER_FIXED_END;
    }

    /** Node of row 0..n. */
    static Vec3 node(Lift lift, Scissor.Shape shape, Side side, int row, End end) {
        double x = end == End.FIXED ? shape.fixedX(row) : shape.slideX(row);
        return new Vec3(x, y(lift, side), shape.z(row));
    }

    /** Centre pin of stage 1..n. */
    static Vec3 centre(Lift lift, Scissor.Shape shape, Side side, int stage) {
        double share = lift.arm().centrePin();
        Vec3 low = node(lift, shape, side, stage - 1, End.FIXED);
        Vec3 high = node(lift, shape, side, stage, End.SLIDER);
        return low.plus(high.minus(low).times(share));
    }

    static Vec3 of(Lift lift, Scissor.Shape shape, PinPart pin) {
        if (pin.place() == PinPlace.CENTRE) {
            return centre(lift, shape, pin.side(), pin.row());
        }
        return node(lift, shape, pin.side(), pin.row(), pin.end());
    }

    /** Frame of an arm: origin at its lower pin, x towards its upper pin, y to the back. */
    static Pose arm(Lift lift, Scissor.Shape shape, Side side, int stage, ArmName kind) {
        boolean rising = kind == ArmName.FROM_FIXED_END;
        Vec3 low = node(lift, shape, side, stage - 1, rising ? End.FIXED : End.SLIDER);
        double angle = rising ? shape.angle(stage) : Math.PI - shape.angle(stage);
        return new Pose(low, Rotation.about(Vec3.Y, -angle));
    }

    /** Frame of the deck: origin midway between its fixed pins. */
    static Pose deck(Lift lift, Scissor.Shape shape) {
        int n = lift.stages();
        double x = deckFixedOverFixedEnd(lift) ? shape.fixedX(n) : shape.slideX(n);
        return Pose.at(new Vec3(x, 0, shape.z(n)));
    }

    /** Pin of a sliding end, or the middle of its bar at y = 0. */
    static Vec3 slider(Lift lift, Scissor.Shape shape, SliderLevel level, double y) {
        if (level == SliderLevel.BASE) {
            return new Vec3(shape.slideX(0), y, 0);
        }
        int n = lift.stages();
        double x = deckFixedOverFixedEnd(lift) ? shape.slideX(n) : shape.fixedX(n);
        return new Vec3(x, y, shape.z(n));
    }
}
