// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/**
 * Blocks, beam and friction between carriage and bridge. The place s along and the lift-off c
 * across the bridge are bilinear, c = Y - y - s theta, with the exact gradient as force directions.
 *
 * <p>The beam is simply supported at the legs: under a force n and a moment m at s from its middle,
 * with p = w^2 - s^2 and e = 1/(6 EI w), it gives e (p^2 n - 2 p s m) and turns by e (-2 p s n +
 * (w^2 + 3 s^2) m); the handbook formulas in a b = p, b - a = -2 s. It lies in series with the
 * blocks, so the compliances add and the sum is inverted.
 */
final class CarriageForces {
    // From the places of carriage and bridge to their origins [m].
    private final double ocx;
    private final double ocy;
    private final double obx;
    private final double oby;
    private final double minusOcy;
    private final double minusObx;
    private final double minusOby;
    private final double offsetX;
    private final double offsetY;
    private final double damping;
    private final double lateralPlay;
    private final double yawPlay;
    private final double lateralCompliance;
    private final double yawCompliance;
    private final double flexibility;
    private final double span2;

    /** Compliance in yaw: at the middle of the bridge, and its growth with the square of s. */
    private final double yawMiddle;

    private final double yawPerPlace;
    private final double friction;
    private final double perLoad;

    // Determinant of the compliance as a polynomial in the square of s: known before its entries.
    private final double det0;
    private final double det1;
    private final double det2;
    private final double det3;

    private double bristle;
    private double force;
    private double moment;
    private double place;
    private double along;
    private double onBridge;
    private double onCarriage;

    /**
     * @param carriage mass about the point to which the carriage's place refers
     */
    CarriageForces(GantryModel model, BodyMass carriage, RidingLoad riding) {
        ocx = -carriage.centreX();
        ocy = -carriage.centreY();
        obx = -model.bridge().centreX();
        oby = -model.bridge().centreY();
        minusOcy = -ocy;
        minusObx = -obx;
        minusOby = -oby;
        offsetX = ocx - obx;
        offsetY = ocy - oby;
        damping = model.damping().guide();
        CarriageGuide guide = model.carriageGuide();
        lateralPlay = guide.lateralPlay();
        yawPlay = guide.yawPlay();
        lateralCompliance = 1 / guide.lateralStiffness();
        yawCompliance = 1 / guide.yawStiffness();
        double halfSpan = model.bridgeGuide().halfSpan();
        span2 = halfSpan * halfSpan;
        flexibility = 1 / (3 * model.beam() * 2 * halfSpan);
        yawPerPlace = 3 * flexibility;
        yawMiddle = yawCompliance + flexibility * span2;
        double e = flexibility;
        double middle = lateralCompliance + e * span2 * span2;
        det0 = middle * yawMiddle;
        det1 = middle * yawPerPlace - 2 * e * span2 * yawMiddle - 4 * e * e * span2 * span2;
        det2 = e * yawMiddle - 2 * e * span2 * yawPerPlace + 8 * e * e * span2;
        det3 = e * yawPerPlace - 4 * e * e;
        friction = guide.friction() + riding.dragX();
        perLoad = guide.frictionCoefficient();
    }

    void stand() {
        bristle = 0;
    }

    /** Forces for a step of h. */
    void evaluate(MovingBody bridge, MovingBody carriage, double h) {
        double th = bridge.yaw;
        double tc = carriage.yaw;
        // s = Xo - Xg, c = Yo - Yg - s theta, and their rates. Signs are kept in constants: a
        // negated factor costs as much as a product.
        double s = fma(oby, th, carriage.x - bridge.x) + fma(minusOcy, tc, offsetX);
        double minusArm = minusObx - s;
        double c = fma(minusArm, th, fma(ocx, tc, (carriage.y - bridge.y) + offsetY));
        place = s;
        double uth = bridge.uyaw;
        double utc = carriage.uyaw;
        double backX = bridge.ux - carriage.ux;
        double minusUs = fma(minusOby, uth, fma(ocy, utc, backX));
        double vc = carriage.uy - bridge.uy;
        double uc = fma(minusUs, th, fma(minusArm, uth, fma(ocx, utc, vc)));
        double dc = fma(damping, uc, LegForces.beyond(c, lateralPlay));
        double dpsi = fma(damping, utc - uth, LegForces.beyond(tc - th, yawPlay));
        resist(s, dc, dpsi);
        double slide = fma(oby, bridge.vyaw, fma(minusOcy, carriage.vyaw, carriage.vx - bridge.vx));
        rub(fma(GantryKernel.STICK * h, slide, bristle), th);
    }

    /** Blocks and beam, for ways beyond play with their damped speeds. */
    private void resist(double s, double dc, double dpsi) {
        double s2 = s * s;
        double p = span2 - s2;
        double ep = flexibility * p;
        double c11 = fma(ep, p, lateralCompliance);
        double minusC12 = (ep + ep) * s;
        double c22 = fma(yawPerPlace, s2, yawMiddle);
        double inverse = 1 / fma(s2 * s2, fma(det3, s2, det2), fma(det1, s2, det0));
        force = fma(c22, dc, minusC12 * dpsi) * inverse;
        moment = fma(c11, dpsi, minusC12 * dc) * inverse;
    }

    /** Friction along the bridge, and what all forces do to both bodies. */
    private void rub(double sticking, double th) {
        double n = force;
        double f = LegForces.clip(sticking, fma(perLoad, Math.abs(n), friction));
        bristle = f;
        double a = n * th - f;
        along = a;
        onCarriage = fma(a, ocy, fma(n, ocx, moment));
        onBridge = fma(a, oby, fma(n, obx + place, moment));
    }

    /** Force on the carriage in x; the bridge gets its opposite [N]. */
    double along() {
        return along;
    }

    /** Yaw moment about the bridge's centre of mass [N m]. */
    double onBridge() {
        return onBridge;
    }

    /** Yaw moment about the carriage's centre of mass, reversed sign [N m]. */
    double onCarriage() {
        return onCarriage;
    }

    /** Force and moment of blocks and beam in series for ways beyond play [N, N m]. */
    double[] resistance(double across, double twist) {
        double p = span2 - place * place;
        double c11 = lateralCompliance + flexibility * p * p;
        double c12 = -2 * flexibility * p * place;
        double c22 = yawMiddle + yawPerPlace * place * place;
        double det = c11 * c22 - c12 * c12;
        return new double[] {
            (c22 * across - c12 * twist) / det, (c11 * twist - c12 * across) / det
        };
    }

    /** Way across and yaw of the carriage beyond play [m, rad]. */
    double[] ways(MovingBody bridge, MovingBody carriage) {
        return new double[] {
            LegForces.beyond(liftOff(bridge, carriage), lateralPlay),
            LegForces.beyond(carriage.yaw - bridge.yaw, yawPlay)
        };
    }

    /** Way of the carriage across the bridge, for the place of the last evaluation [m]. */
    double liftOff(MovingBody bridge, MovingBody carriage) {
        return carriage.y + ocy + ocx * carriage.yaw - bridge.y - oby - (obx + place) * bridge.yaw;
    }

    double lateralPlay() {
        return lateralPlay;
    }

    double yawPlay() {
        return yawPlay;
    }

    double lateralCompliance() {
        return lateralCompliance;
    }

    double yawCompliance() {
        return yawCompliance;
    }

    /** Friction along the bridge at the last evaluation [N]. */
    double bristle() {
        return bristle;
    }

    /** Force across the bridge rail at the last evaluation [N]. */
    double force() {
        return force;
    }

    double moment() {
        return moment;
    }

    /** Place along the bridge at the last evaluation [m]. */
    double place() {
        return place;
    }

    static final int SAVED = 4;

    int save(double[] out, int at) {
        out[at] = bristle;
        out[at + 1] = force;
        out[at + 2] = moment;
        out[at + 3] = place;
        return at + SAVED;
    }

    int restore(double[] in, int at) {
        bristle = in[at];
        force = in[at + 1];
        moment = in[at + 2];
        place = in[at + 3];
        return at + SAVED;
    }
}
