// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.Machine;
import foldwright.machine.linkage.Arm;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.DeckEnd;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.PinHeight;

/**
 * Plane geometry of a scissor stack, both arms of a cross at one angle: with the centre pin at
 * share c of the arms, the feet stand 2 c L cos(theta) apart and the heads 2 (1 - c) L cos(theta),
 * which are the feet of the next stage.
 */
public final class LiftShape {
    private final int stages;
    private final double length;
    private final double centre;
    private final Lift lift;

    public LiftShape(Machine machine) {
        lift = machine.lift();
        stages = lift.stages();
        length = lift.arm().length();
        centre = lift.arm().centrePin();
    }

    /** Where the joints of a stage are, in the base frame [m]. */
    public static final class Joints {
        /** Pins at the fixed side and at the sliding side of each level 0..n. */
        public final double[] fixedX;

        public final double[] slidingX;
        public final double[] z;

        /** Angle of each stage's arms [rad]. */
        public final double[] angle;

        Joints(int stages) {
            fixedX = new double[stages + 1];
            slidingX = new double[stages + 1];
            z = new double[stages + 1];
            angle = new double[stages];
        }
    }

    public int stages() {
        return stages;
    }

    public Arm arm() {
        return lift.arm();
    }

    /** Height of the deck pins above the base pins when folded flat [m]. */
    public double flat() {
        return height(lift.travel().fold().low());
    }

    /** The same when fully open [m]. */
    public double top() {
        return height(lift.travel().fold().high());
    }

    /** Lowest height at which it works [m]. */
    public double workLow() {
        return height(lift.travel().working().low());
    }

    /** Pivot height of an opening given as a height or as the angle of the lowest arms [m]. */
    public double height(Opening opening) {
        if (opening instanceof PinHeight pin) {
            return pin.height();
        }
        return stackHeight(((ArmAngle) opening).angle());
    }

    private double stackHeight(double angle) {
        double cos = Math.cos(angle);
        double sum = 0;
        for (int i = 0; i < stages; i++) {
            sum += length * Math.sqrt(Math.max(0, 1 - cos * cos));
            cos *= (1 - centre) / centre;
        }
        return sum;
    }

    /**
     * Fills the joints at a pivot height [m]; heights out of reach are taken to the nearest within.
     */
    public void solve(double height, Joints out) {
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < 60; i++) {
            double mid = 0.5 * (low + high);
            if (stackHeight(mid) < height) {
                low = mid;
            } else {
                high = mid;
            }
        }
        double cos = Math.cos(low);
        out.fixedX[0] = 0;
        out.slidingX[0] = 2 * centre * length * cos;
        out.z[0] = 0;
        for (int i = 0; i < stages; i++) {
            double c = Math.min(1, cos);
            out.angle[i] = Math.acos(c);
            out.fixedX[i + 1] = out.slidingX[i] - length * c;
            out.slidingX[i + 1] = out.fixedX[i] + length * c;
            out.z[i + 1] = out.z[i] + length * Math.sqrt(1 - c * c);
            cos *= (1 - centre) / centre;
        }
    }

    public Joints joints() {
        return new Joints(stages);
    }

    /** Whether the deck's fixed pins stand over the fixed end of the base. */
    public boolean deckFixedOverFixed() {
        return lift.sliders().deckFixed() == DeckEnd.OVER_FIXED_END;
    }

    /**
     * Middle of an arm's thickness across the machine: the rising arm lies outside, the falling arm
     * inside [m].
     */
    public double armY(int side, boolean falling) {
        double step = (thickness() + gap()) / 2;
        return side * (lift.width() / 2 + (falling ? -step : step));
    }

    public double thickness() {
        return lift.arm().section().width();
    }

    public double depth() {
        return lift.arm().section().depth();
    }

    public double gap() {
        return lift.arm().gap().orElse(0.1 * thickness());
    }

    /** Outer face of a side's arms, distance from the middle plane of the machine [m]. */
    public double outside() {
        return lift.width() / 2 + thickness() + gap() / 2;
    }

    /** Inner face of a side's arms [m]. */
    public double inside() {
        return lift.width() / 2 - thickness() - gap() / 2;
    }

    /** How far it is open at a pivot height [m], in words: "lying flat", "31 % open". */
    public String openness(double height) {
        double share = (height - flat()) / (top() - flat());
        if (share < 1e-6) {
            return "lying flat";
        }
        return share > 1 - 1e-6 ? "fully open" : Math.round(100 * share) + "\u00a0% open";
    }
}
