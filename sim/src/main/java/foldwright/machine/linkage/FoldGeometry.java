// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

/**
 * Plane geometry of an ideal lift: how far it is open, and where its pins then are.
 *
 * <p>With the centre pin at share f of the arm, a stage whose lower arms stand at the angle t spans
 * 2 f L cos t below and 2 (1 - f) L cos t above, so the next stage stands at cos t' = cos t (1 -
 * f)/f. Each stage is L sin t high. For f = 1/2 all stages stand at the same angle. Own derivation
 * from similar triangles; for f = 1/2 it is the usual H = n L sin t.
 */
public final class FoldGeometry {
    private static final int HALVINGS = 80;

    private final int stages;
    private final double length;
    private final double share;

    /** The geometry of a lift. */
    public FoldGeometry(Lift lift) {
        this.stages = lift.stages();
        this.length = lift.arm().length();
        this.share = lift.arm().centrePin();
    }

    /** Arm angle of a stage, counted from 1; not a number where the stage cannot close [rad]. */
    public double angle(double lowest, int stage) {
        return Math.acos(Math.cos(lowest) * Math.pow((1 - share) / share, stage - 1));
    }

    /** Whether all stages close at that angle of the lowest arms. */
    public boolean closes(double lowest) {
        return !Double.isNaN(angle(lowest, stages));
    }

    /** Height of the deck pins above the base pins [m]. */
    public double height(double lowest) {
        return levelHeight(lowest, stages);
    }

    /** Height above the base pins of the pins on top of a stage; level 0 are the base pins [m]. */
    public double levelHeight(double lowest, int level) {
        double height = 0;
        for (int stage = 1; stage <= level; stage++) {
            height += length * Math.sin(angle(lowest, stage));
        }
        return height;
    }

    /** Distance of the two pins on top of a stage; level 0 are the base pins [m]. */
    public double spread(double lowest, int level) {
        return level == 0
                ? 2 * share * length * Math.cos(lowest)
                : 2 * (1 - share) * length * Math.cos(angle(lowest, level));
    }

    /** Place along x of the pin at the fixed end on top of a stage; 0 at the base [m]. */
    public double levelStart(double lowest, int level) {
        double x = 0;
        for (int stage = 1; stage <= level; stage++) {
            x += (2 * share - 1) * length * Math.cos(angle(lowest, stage));
        }
        return x;
    }

    /** Smallest height at which all stages close [m]. */
    public double lowestHeight() {
        return height(lowestAngle());
    }

    /** Largest height, all arms upright [m]. */
    public double largestHeight() {
        return stages * length;
    }

    /** Angle of the lowest arms at an opening; not a number where it cannot be reached [rad]. */
    public double angle(Opening opening) {
        if (opening instanceof ArmAngle byAngle) {
            return closes(byAngle.angle()) ? byAngle.angle() : Double.NaN;
        }
        double height = ((PinHeight) opening).height();
        if (height >= largestHeight() || height < lowestHeight()) {
            return Double.NaN;
        }
        return share == 0.5 ? Math.asin(height / (stages * length)) : bisect(height);
    }

    /** Height of the deck pins at an opening; not a number where it cannot be reached [m]. */
    public double height(Opening opening) {
        if (opening instanceof PinHeight byHeight) {
            return Double.isNaN(angle(opening)) ? Double.NaN : byHeight.height();
        }
        return height(angle(opening));
    }

    private double lowestAngle() {
        double steepest = Math.pow(share / (1 - share), stages - 1.0);
        return Math.acos(Math.min(1, steepest));
    }

    private double bisect(double height) {
        double low = lowestAngle();
        double high = Math.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (closes(middle) && height(middle) > height) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
