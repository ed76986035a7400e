// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltSystem;

/**
 * Where the tool is beside its command, and why. The parts add up to the total.
 *
 * <p>A skew theta moves the tool by lever and by belt: at that skew the belts would hold the
 * carriage at the place (x, y) = -Kxy^-1 Kxyt theta (Kxy their stiffness over the place, Kxyt the
 * coupling to skew), which in the single-loop H layout is w theta along the bridge. Both count as
 * skew, divided into squareness, play and flex. Belt stretch is what remains after all others.
 *
 * @param total tool minus command [m]
 * @param beltStretch elastic belts under load
 * @param squareness skew the rails hold without load
 * @param skewPlay skew within the blocks' free yaw
 * @param skewFlex skew beyond it
 * @param blockGive sideways give of the blocks of legs and carriage
 * @param bending of the bridge beam
 * @param carriageTwist yaw of the carriage against the bridge
 * @param motorLag rotors beside their commands, through the motion relation
 */
public record ErrorSplit(
        Offset total,
        Offset beltStretch,
        Offset squareness,
        Offset skewPlay,
        Offset skewFlex,
        Offset blockGive,
        Offset bending,
        Offset carriageTwist,
        Offset motorLag) {

    /**
     * A way in the plane of motion.
     *
     * @param x along the bridge [m]
     * @param y along the rails [m]
     */
    public record Offset(double x, double y) {
        Offset minus(Offset other) {
            return new Offset(x - other.x, y - other.y);
        }

        /** Length [m]. */
        public double size() {
            return Math.hypot(x, y);
        }
    }

    /**
     * Splits the error of a kernel as it stands.
     *
     * @param x commanded place of the carriage origin along the bridge [m]
     * @param y commanded place of the bridge [m]
     */
    public static ErrorSplit of(GantryKernel k, double x, double y) {
        GantryModel model = k.model;
        Offset total =
                new Offset(k.toolX() - x - model.tool().x(), k.toolY() - y - model.tool().y());
        double square = model.bridgeGuide().squareness();
        double free = model.bridgeGuide().freeYaw();
        double beyond = k.bridge.yaw - square;
        double play = Math.max(-free, Math.min(free, beyond));
        Offset perSkew = perSkew(k, x);
        Offset lag = lag(k);
        Offset squareness = scaled(perSkew, square);
        Offset skewPlay = scaled(perSkew, play);
        Offset skewFlex = scaled(perSkew, beyond - play);
        double[] beam = beam(k);
        double twist = k.carriage.yaw - k.bridge.yaw;
        double lift = k.rail.liftOff(k.bridge, k.carriage);
        Offset give = new Offset(k.bridge.x + k.obx - k.oby * k.bridge.yaw, lift - beam[0]);
        double ty = model.tool().y();
        double tx = model.tool().x();
        Offset bending = new Offset(-ty * beam[1], beam[0] + tx * beam[1]);
        Offset carriageTwist = new Offset(-ty * (twist - beam[1]), tx * (twist - beam[1]));
        Offset stretch =
                total.minus(squareness)
                        .minus(skewPlay)
                        .minus(skewFlex)
                        .minus(give)
                        .minus(bending)
                        .minus(carriageTwist)
                        .minus(lag);
        return new ErrorSplit(
                total, stretch, squareness, skewPlay, skewFlex, give, bending, carriageTwist, lag);
    }

    /** Deflection and slope of the beam at the carriage [m, rad]. */
    private static double[] beam(GantryKernel k) {
        double w = k.model.bridgeGuide().halfSpan();
        double a = w + k.carriagePlace();
        double b = w - k.carriagePlace();
        double f = 1 / (3 * k.model.beam() * 2 * w);
        double n = k.carriageForce();
        double m = k.carriageMoment();
        return new double[] {
            f * (a * a * b * b * n + a * b * (b - a) * m),
            f * (a * b * (b - a) * n + (a * a - a * b + b * b) * m)
        };
    }

    private static Offset scaled(Offset offset, double factor) {
        return new Offset(offset.x * factor, offset.y * factor);
    }

    private static Offset lag(GantryKernel k) {
        double x = 0;
        double y = 0;
        for (int m = 0; m < k.axles.motors.length; m++) {
            FieldMotor motor = k.axles.motors[m];
            double behind = -k.lag(motor) / motor.poles;
            x += k.relation.xPerAngle(m) * behind;
            y += k.relation.yPerAngle(m) * behind;
        }
        return new Offset(x, y);
    }

    /** Way of the tool a radian of skew, belts in balance, carriage at x [m/rad]. */
    private static Offset perSkew(GantryKernel k, double x) {
        double kxx = 0;
        double kxy = 0;
        double kyy = 0;
        double kxt = 0;
        double kyt = 0;
        double[] row = new double[BeltSystem.POSE_COLUMNS + k.system.axleNames().size()];
        k.system.place(0, k.bridgePlace(), 0, x, k.bridgePlace(), 0);
        for (int i = 0; i < k.sections(); i++) {
            if (k.tension(i) > 0) {
                k.system.gradient(i, row);
                double gx = row[3];
                double gy = row[1] + row[4];
                double gt = row[2] + x * row[4] + row[5];
                double stiffness = k.system.stiffness(i);
                kxx += stiffness * gx * gx;
                kxy += stiffness * gx * gy;
                kyy += stiffness * gy * gy;
                kxt += stiffness * gx * gt;
                kyt += stiffness * gy * gt;
            }
        }
        double det = kxx * kyy - kxy * kxy;
        boolean held = det > 1e-12 * kxx * kyy;
        double dragX = held ? -(kyy * kxt - kxy * kyt) / det : 0;
        double dragY = held ? -(kxx * kyt - kxy * kxt) / det : 0;
        return new Offset(dragX - k.model.tool().y(), dragY + x + k.model.tool().x());
    }
}
