// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.Machine;
import org.joml.Matrix4x3f;

/**
 * Places the bodies of the lift at a height, from geometry alone: loads bend a real lift by less
 * than a line is wide, so the picture needs no solver.
 */
public final class LiftMotion {
    private final LiftShape shape;
    private final LiftShape.Joints joints;
    private final LiftShape.Joints flat;
    private final double pinHeight;
    private final int base;
    private final int deck;
    private final int foot;
    private final int deckSlider;
    private final int[] rising;
    private final int[] falling;

    LiftMotion(Machine machine, LiftShape shape, Bodies bodies) {
        this.shape = shape;
        joints = shape.joints();
        flat = shape.joints();
        shape.solve(shape.flat(), flat);
        pinHeight = machine.base().pinHeight();
        base = bodies.of(Bodies.BASE);
        deck = bodies.of(Bodies.DECK);
        foot = bodies.of(Bodies.FOOT);
        deckSlider = bodies.of(Bodies.DECK_SLIDER);
        rising = new int[shape.stages()];
        falling = new int[shape.stages()];
        for (int i = 0; i < rising.length; i++) {
            rising[i] = bodies.rising(i + 1);
            falling[i] = bodies.falling(i + 1);
        }
    }

    /** Where the joints were put last. */
    public LiftShape.Joints joints() {
        return joints;
    }

    /** How far the slider ends have moved towards the fixed end since flat [m]. */
    public double footTravel() {
        return flat.slidingX[0] - joints.slidingX[0];
    }

    /** Places base, arms, sliders and deck at a pivot height [m]. */
    public void place(double height, Pose out) {
        shape.solve(height, joints);
        int n = shape.stages();
        out.body[base].translation(0, 0, (float) pinHeight);
        out.body[foot].translation((float) joints.slidingX[0], 0, (float) pinHeight);
        boolean overFixed = shape.deckFixedOverFixed();
        double pinned = overFixed ? joints.fixedX[n] : joints.slidingX[n];
        double sliding = overFixed ? joints.slidingX[n] : joints.fixedX[n];
        float z = (float) (pinHeight + joints.z[n]);
        out.body[deck].translation((float) pinned, 0, z);
        out.body[deckSlider].translation((float) sliding, 0, z);
        for (int i = 0; i < n; i++) {
            float at = (float) (pinHeight + joints.z[i]);
            float angle = (float) joints.angle[i];
            arm(out.body[rising[i]], (float) joints.fixedX[i], at, angle);
            arm(out.body[falling[i]], (float) joints.slidingX[i], at, (float) Math.PI - angle);
        }
    }

    /** The arm's x axis points from its lower pin to its upper one. */
    private static void arm(Matrix4x3f m, float x, float z, float angle) {
        m.translation(x, 0, z).rotateY(-angle);
    }
}
