// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.PinHeight;
import java.util.Locale;

/**
 * Closed-form shape of a scissor stack of equal arms: where every node is at every opening, and how
 * fast it moves there.
 *
 * <p>All stages share one arm of length L, its centre pin at the share c of the length from the
 * lower end. With c = 1/2 all stages stand at one angle. Otherwise each stage is as wide at the
 * bottom as the one below is at the top, so cos θ(k+1) = (1 - c)/c cos θ(k), and the fixed-side
 * nodes wander sideways by (2c - 1) L cos θ(k) a stage. Exact for ideal pins.
 *
 * <p>Frame: x from the fixed to the sliding feet, z up, origin at the fixed base pin.
 */
public final class Scissor {
    private final int stages;
    private final double arm;
    private final double share;

    /** The stack of a machine. */
    public Scissor(Lift lift) {
        this(lift.stages(), lift.arm().length(), lift.arm().centrePin());
    }

    /**
     * @param stages number of stages
     * @param arm L, end pin to end pin [m]
     * @param share c, place of the centre pin from the lower end over L [1]
     */
    public Scissor(int stages, double arm, double share) {
        this.stages = stages;
        this.arm = arm;
        this.share = share;
    }

    /** Number of stages. */
    public int stages() {
        return stages;
    }

    /** Distance between the end pins of an arm [m]. */
    public double arm() {
        return arm;
    }

    /** Distance from the lower end pin of an arm to its centre pin [m]. */
    public double lowerPart() {
        return share * arm;
    }

    /**
     * The shape at an angle of the lowest arms.
     *
     * @param angle above horizontal, between 0 and π/2 [rad]
     * @throws IllegalArgumentException if the stack cannot close there
     */
    public Shape at(double angle) {
        return new Shape(angle);
    }

    /** The shape at an opening of the machine file. */
    public Shape at(Opening opening) {
        if (opening instanceof ArmAngle a) {
            return at(a.angle());
        }
        return atHeight(((PinHeight) opening).height());
    }

    /**
     * The shape at a pivot height.
     *
     * @param height deck pins above base pins [m]
     * @throws IllegalArgumentException if no opening gives that height
     */
    public Shape atHeight(double height) {
        if (share == 0.5) {
            double sine = height / (stages * arm);
            if (!(sine > 0 && sine < 1)) {
                throw outOfReach(height);
            }
            return at(Math.asin(sine));
        }
        return at(angleByBisection(height));
    }

    /** Height rises with the angle, so halving between the ends of the range always finds it. */
    private double angleByBisection(double height) {
        double low = lowestAngle();
        double high = Math.PI / 2;
        if (!(height > at(low).height() && height < stages * arm)) {
            throw outOfReach(height);
        }
        for (int i = 0; i < 100 && high - low > 1e-16; i++) {
            double mid = 0.5 * (low + high);
            if (at(mid).height() < height) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return 0.5 * (low + high);
    }

    /** Lowest angle of the lowest arms at which all stages close [rad]. */
    double lowestAngle() {
        double growth = Math.pow((1 - share) / share, stages - 1);
        return growth <= 1 ? 1e-6 : Math.acos((1 - 1e-15) / growth);
    }

    private IllegalArgumentException outOfReach(double height) {
        return new IllegalArgumentException(
                String.format(
                        Locale.ROOT,
                        "%d stages with arms of %.1f mm cannot stand %.1f mm high",
                        stages,
                        arm * 1e3,
                        height * 1e3));
    }

    /** Nodes of the stack at one opening; rows 0 (base pins) to n (deck pins). */
    public final class Shape {
        private final double[] angle = new double[stages];
        private final double[] turn = new double[stages];
        private final double[] fixedX = new double[stages + 1];
        private final double[] slideX = new double[stages + 1];
        private final double[] z = new double[stages + 1];
        private final double rise;

        private Shape(double lowest) {
            if (!(lowest > 0 && lowest < Math.PI / 2)) {
                throw new IllegalArgumentException(
                        "arm angle must lie between 0 and 90°, found " + HandSum.degrees(lowest));
            }
            angle[0] = lowest;
            turn[0] = 1;
            slideX[0] = 2 * share * arm * Math.cos(lowest);
            double growth = (1 - share) / share;
            double sum = 0;
            for (int k = 0; k < stages; k++) {
                if (k > 0) {
                    double cos = growth * Math.cos(angle[k - 1]);
                    if (growth != 1 && cos >= 1) {
                        throw new IllegalArgumentException(
                                "stage " + (k + 1) + " cannot close at " + HandSum.degrees(lowest));
                    }
                    angle[k] = growth == 1 ? lowest : Math.acos(cos);
                    turn[k] = turn[k - 1] * growth * Math.sin(angle[k - 1]) / Math.sin(angle[k]);
                }
                double run = arm * Math.cos(angle[k]);
                z[k + 1] = z[k] + arm * Math.sin(angle[k]);
                slideX[k + 1] = fixedX[k] + run;
                fixedX[k + 1] = slideX[k] - run;
                sum += run * turn[k];
            }
            rise = sum;
        }

        /** Number of stages. */
        public int stages() {
            return stages;
        }

        /** Arm angle of stage k = 1..n above horizontal [rad]. */
        public double angle(int stage) {
            return angle[stage - 1];
        }

        /** Angle of stage k per angle of stage 1 [1]. */
        public double turn(int stage) {
            return turn[stage - 1];
        }

        /** x of the node on the fixed side of row 0..n [m]. */
        public double fixedX(int row) {
            return fixedX[row];
        }

        /** x of the node on the sliding side of row 0..n [m]. */
        public double slideX(int row) {
            return slideX[row];
        }

        /** Height of row 0..n above the base pins [m]. */
        public double z(int row) {
            return z[row];
        }

        /** Pivot height, base pins to deck pins [m]. */
        public double height() {
            return z[stages];
        }

        /** Height of a stage k = 1..n [m]. */
        public double stageHeight(int stage) {
            return z[stage] - z[stage - 1];
        }

        /** Lowest stage [m]: the first to close on a finger or to jam. */
        public double lowestStageHeight() {
            double lowest = Double.POSITIVE_INFINITY;
            for (int k = 1; k <= stages; k++) {
                lowest = Math.min(lowest, stageHeight(k));
            }
            return lowest;
        }

        /** Distance of the sliding feet from the fixed base pins [m]. */
        public double foot() {
            return slideX[0];
        }

        /** dH/dθ of the lowest arms [m/rad]. */
        public double rise() {
            return rise;
        }

        /** Height gained per inward foot travel, -dH/dx [1]. */
        public double heightPerTravel() {
            return rise / (2 * share * arm * Math.sin(angle[0]));
        }
    }
}
