// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** Blocks and friction of the two leg rails on the bridge. */
final class LegForces {
    private final LateralSpring firstLateral;
    private final YawSpring firstYaw;
    private final double squareness;

    /** Whether what the blocks carry adds to the friction of their rails. */
    private final boolean rubs;

    private final double damping;
    private final double armLeft;
    private final double armRight;
    private final double frictionLeft;
    private final double frictionRight;

    private double bristleLeft;
    private double bristleRight;
    private double side;
    private double friction;
    private double moment;
    private double yawMoment;

    LegForces(GantryModel model, GuideSprings springs, RidingLoad riding) {
        BridgeGuide guide = model.bridgeGuide();
        firstLateral = springs.firstLateral();
        firstYaw = springs.firstYaw();
        squareness = guide.squareness();
        rubs = guide.frictionCoefficient() > 0;
        damping = model.damping().guide();
        armLeft = -model.bridge().centreX() - guide.halfSpan();
        armRight = -model.bridge().centreX() + guide.halfSpan();
        frictionLeft = guide.leftFriction() + riding.dragY() / 2;
        frictionRight = guide.rightFriction() + riding.dragY() / 2;
    }

    void stand() {
        bristleLeft = 0;
        bristleRight = 0;
    }

    /** Forces for a step of h. */
    void evaluate(MovingBody bridge, double h) {
        double th = bridge.yaw;
        double ux = bridge.ux;
        double uth = bridge.uyaw;
        double held = 0;
        double turning = 0;
        double left = frictionLeft;
        double right = frictionRight;
        for (LateralSpring s = firstLateral; s != null; s = s.next) {
            double f = s.force(s.way(bridge.x, th), damping * s.speed(ux, uth));
            held -= f;
            turning = fma(f, s.lever(), turning);
            if (rubs) {
                double size = Math.abs(f);
                left = fma(s.rubLeft, size, left);
                right = fma(s.rubRight, size, right);
            }
        }
        double yaw = th - squareness;
        for (YawSpring s = firstYaw; s != null; s = s.next) {
            turning -= s.stiffness * fma(damping, uth, s.beyond(yaw));
        }
        side = held;
        yawMoment = turning;
        rub(bridge, GantryKernel.STICK * h, left, right);
    }

    /** Friction of both rails, which slip at these forces. */
    private void rub(MovingBody bridge, double stick, double left, double right) {
        double vy = bridge.vy;
        double vth = bridge.vyaw;
        double fl = fma(stick, fma(armLeft, vth, vy), bristleLeft);
        double fr = fma(stick, fma(armRight, vth, vy), bristleRight);
        fl = clip(fl, left);
        fr = clip(fr, right);
        bristleLeft = fl;
        bristleRight = fr;
        friction = fl + fr;
        moment = yawMoment - (fl * armLeft + fr * armRight);
    }

    /** Force across the rails on the bridge [N]. */
    double side() {
        return side;
    }

    /** Friction of both rails against the bridge [N]. */
    double friction() {
        return friction;
    }

    /** Yaw moment of blocks and friction on the bridge [N m]. */
    double moment() {
        return moment;
    }

    /**
     * Nearest value within a limit to both sides. Without branches: which way friction points
     * cannot be foretold, and a wrong guess costs more than two sums.
     */
    static double clip(double value, double limit) {
        return 0.5 * (Math.abs(value + limit) - Math.abs(value - limit));
    }

    /** What is left of a way beyond a free way to both sides, with its sign. */
    static double beyond(double value, double free) {
        double above = value - free;
        double below = value + free;
        return above > 0 ? above : below < 0 ? below : 0;
    }

    /** Yaw moment of the blocks on the bridge at the last evaluation [N m]. */
    double yawMoment() {
        return yawMoment;
    }

    /** Power of the rails' friction for a velocity of the bridge [W]. */
    double frictionPower(double uy, double uyaw) {
        return bristleLeft * (uy + armLeft * uyaw) + bristleRight * (uy + armRight * uyaw);
    }

    static final int SAVED = 3;

    int save(double[] out, int at) {
        out[at] = bristleLeft;
        out[at + 1] = bristleRight;
        out[at + 2] = yawMoment;
        return at + SAVED;
    }

    int restore(double[] in, int at) {
        bristleLeft = in[at];
        bristleRight = in[at + 1];
        yawMoment = in[at + 2];
        return at + SAVED;
    }
}
