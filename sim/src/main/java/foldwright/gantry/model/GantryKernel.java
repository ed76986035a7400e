// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.RouteCheck;

/**
 * Bridge, carriage and rotors in time.
 *
 * <p>Coordinates are absolute: centres of mass and yaw of bridge and carriage, angles of axles. So
 * the mass is diagonal and constant, and a step is explicit: forces at q(n), then v(n+1/2) =
 * v(n-1/2) + h a(n), q(n+1) = q(n) + h v(n+1/2) (leapfrog, second order; L. Verlet, Phys. Rev. 159,
 * 1967, 98). Damping uses v(n-1/2) + h/2 a(n-1) for v(n). Every nonlinearity is continuous and
 * piecewise linear: tension max(0, .), play x - clip(x), friction clip(f + k du, +-F) which truly
 * sticks.
 *
 * <p>The place s and lift-off c of the carriage on the bridge are bilinear, c = Y - y - s theta,
 * with the exact gradient as force directions. Left out: changes of strand direction with skew
 * (under 0.05 % of forces at 1 mrad), inertia of the belts themselves.
 *
 * <p>One call of {@link #evaluate} and one of {@link #advance} make a step; between them positions,
 * tensions and forces belong to the same instant. No allocation in either. Stable while the highest
 * angular frequency times h stays under 1.2: see {@link Stability}.
 *
 * <p>Longer than other classes because the step is one straight run over locals.
 */
public final class GantryKernel {
    /** Stiffness of a sticking rail [N/m]; see the note on friction in docs/gantry.md. */
    static final double STICK = 1e6;

    /** Steps between two looks at the exact geometry where belt rows change over the travel. */
    private static final int RENEW = 25;

    final GantryModel model;
    final BeltSystem system;
    final MotionRelation relation;
    final BeltArrays belts;
    final GuideArrays guide;
    final AxleArrays axles;

    // Geometry: carriage origin from its centre of mass, bridge origin from its own.
    final double ocx;
    final double ocy;
    final double obx;
    final double oby;
    final double halfSpan;
    final double squareness;
    final double guideDamping;
    private final double beltDamping;
    final double carriageLateralPlay;
    final double carriageYawPlay;
    final double lateralCompliance;
    final double yawCompliance;
    final double beamFlexibility;
    private final double leftFriction;
    private final double rightFriction;
    private final double carriageFriction;
    private final double railMu;
    private final double carriageMu;
    final double massXb;
    private final double perMassXb;
    final double massYb;
    private final double perMassYb;
    final double inertiaB;
    private final double perInertiaB;
    final double massXc;
    private final double perMassXc;
    final double massYc;
    private final double perMassYc;
    final double inertiaC;
    private final double perInertiaC;

    // State. Positions at n, velocities at n - 1/2 before advance, accelerations at n.
    double xb;
    double yb;
    double th;
    double xc;
    double yc;
    double tc;
    double vxb;
    double vyb;
    double vth;
    double vxc;
    double vyc;
    double vtc;
    double axb;
    double ayb;
    double ath;
    double axc;
    double ayc;
    double atc;
    final double[] angle;
    final double[] rate;
    final double[] acceleration;
    final double[] command;
    final double[] commandRate;
    final double[] bristle;
    double bristleLeft;
    double bristleRight;
    double bristleCarriage;

    // Results of the last evaluation.
    double fxb;
    double fyb;
    double fth;
    double fxc;
    double fyc;
    double ftc;
    final double[] torque;
    final double[] tension;
    final double[] motorTorque;
    final double[] railForce = new double[2];
    double guideMoment;
    double carriageForce;
    double carriageMoment;
    double carriagePlace;
    double largestLag;
    final double[] predicted;
    private final double[][] parts;
    private final double midX;
    private final double midY;
    private final double[] motorPerX;
    private final double[] motorPerY;
    private final double toolArmX;
    private final double toolArmY;
    private int sinceRenewal;

    /** Builds the kernel; the carriage stands at the middle of its travel. */
    public GantryKernel(GantryModel model) {
        this.model = model;
        system = new BeltSystem(model.layout(), model.idlers());
        relation = RouteCheck.relation(system);
        belts = new BeltArrays(system, model);
        guide = new GuideArrays(model.bridgeGuide());
        axles = new AxleArrays(system, model, belts);
        ocx = -model.carriage().centreX();
        ocy = -model.carriage().centreY();
        obx = -model.bridge().centreX();
        oby = -model.bridge().centreY();
        halfSpan = model.bridgeGuide().halfSpan();
        squareness = model.bridgeGuide().squareness();
        guideDamping = model.damping().guide();
        beltDamping = model.damping().belt();
        CarriageGuide cg = model.carriageGuide();
        carriageLateralPlay = cg.lateralPlay();
        carriageYawPlay = cg.yawPlay();
        lateralCompliance = 1 / cg.lateralStiffness();
        yawCompliance = 1 / cg.yawStiffness();
        beamFlexibility = 1 / (3 * model.beam() * 2 * halfSpan);
        IdlerLoad idlers = IdlerLoad.of(model);
        leftFriction = model.bridgeGuide().leftFriction() + idlers.dragY() / 2;
        rightFriction = model.bridgeGuide().rightFriction() + idlers.dragY() / 2;
        carriageFriction = cg.friction() + idlers.dragX();
        railMu = model.bridgeGuide().frictionCoefficient();
        carriageMu = cg.frictionCoefficient();
        massXb = model.bridge().mass();
        massYb = model.bridge().mass() + idlers.massY();
        inertiaB = model.bridge().yawInertia();
        massXc = model.carriage().mass() + idlers.massX();
        massYc = model.carriage().mass();
        inertiaC = model.carriage().yawInertia();
        perMassXb = 1 / massXb;
        perMassYb = 1 / massYb;
        perInertiaB = 1 / inertiaB;
        perMassXc = 1 / massXc;
        perMassYc = 1 / massYc;
        perInertiaC = 1 / inertiaC;
        int n = axles.count + 1;
        angle = new double[n];
        rate = new double[n];
        acceleration = new double[n];
        bristle = new double[n];
        torque = new double[n];
        predicted = new double[n];
        tension = new double[belts.count];
        command = new double[axles.motors];
        commandRate = new double[axles.motors];
        motorTorque = new double[axles.motors];
        midX = model.layout().travel().xMid();
        midY = model.layout().travel().yMid();
        motorPerX = new double[axles.motors];
        motorPerY = new double[axles.motors];
        for (int m = 0; m < axles.motors; m++) {
            motorPerX[m] = relation.anglePerX(axles.motorAxle[m]);
            motorPerY[m] = relation.anglePerY(axles.motorAxle[m]);
        }
        toolArmX = ocx + model.tool().x();
        toolArmY = ocy + model.tool().y();
        parts =
                new double[][] {
                    angle,
                    rate,
                    acceleration,
                    bristle,
                    torque,
                    predicted,
                    tension,
                    command,
                    commandRate,
                    motorTorque
                };
        stand(midX, midY);
    }

    /** Puts the machine square and at rest at a place, rotors on their commands. */
    public void stand(double x, double y) {
        xb = -obx;
        yb = y - oby;
        th = 0;
        xc = x - ocx;
        yc = y - ocy;
        tc = 0;
        vxb = vyb = vth = vxc = vyc = vtc = 0;
        axb = ayb = ath = axc = ayc = atc = 0;
        bristleLeft = bristleRight = bristleCarriage = 0;
        command(x, y, 0, 0);
        double dx = x - model.layout().travel().xMid();
        double dy = y - model.layout().travel().yMid();
        for (int a = 0; a < axles.count; a++) {
            angle[a] = relation.anglePerX(a) * dx + relation.anglePerY(a) * dy;
            rate[a] = 0;
            acceleration[a] = 0;
            bristle[a] = 0;
        }
        renewBelts();
    }

    /** Takes place, rest and commands of another kernel of the same layout. */
    public void standAs(GantryKernel other) {
        stand(model.layout().travel().xMid(), model.layout().travel().yMid());
        xb = other.xb;
        yb = other.yb;
        th = other.th;
        xc = other.xc;
        yc = other.yc;
        tc = other.tc;
        System.arraycopy(other.angle, 0, angle, 0, angle.length);
        System.arraycopy(other.command, 0, command, 0, command.length);
    }

    /** Sets what the motors are told: place and speed of the carriage origin [m, m/s]. */
    public void command(double x, double y, double vx, double vy) {
        double dx = x - midX;
        double dy = y - midY;
        for (int m = 0; m < command.length; m++) {
            double perX = motorPerX[m];
            double perY = motorPerY[m];
            double told = perX * dx + perY * dy;
            double grain = axles.microstep[m];
            command[m] = grain > 0 ? grain * Math.rint(told / grain) : told;
            commandRate[m] = perX * vx + perY * vy;
        }
    }

    /** Forces at the present positions; h is the step the friction has moved through [s]. */
    public void evaluate(double h) {
        if (!belts.constant && h > 0 && ++sinceRenewal >= RENEW) {
            renewBelts();
        }
        double half = 0.5 * h;
        double uxb = vxb + half * axb;
        double uyb = vyb + half * ayb;
        double uth = vth + half * ath;
        double uxc = vxc + half * axc;
        double uyc = vyc + half * ayc;
        double utc = vtc + half * atc;
        fxb = fyb = fth = fxc = fyc = ftc = 0;
        evaluateAxles(h, half);
        evaluateLegs(uxb, uth, h);
        evaluateCarriage(uxb, uyb, uth, uxc, uyc, utc, h);
        evaluateBelts(uxb, uyb, uth, uxc, uyc, utc);
    }

    /** Takes belt rows from the exact geometry here; nothing to do where they are constant. */
    void renewBelts() {
        if (!belts.constant) {
            belts.renew(xb, yb, th, xc, yc, tc);
            sinceRenewal = 0;
        }
    }

    /** Nearest value within a limit to both sides; branches, for they are well predicted. */
    private static double clip(double value, double limit) {
        return value > limit ? limit : value < -limit ? -limit : value;
    }

    private void evaluateAxles(double h, double half) {
        int n = axles.count;
        for (int a = 0; a < n; a++) {
            predicted[a] = rate[a] + half * acceleration[a];
            double f = bristle[a] + axles.stick[a] * h * rate[a];
            double limit = axles.drag[a];
            f = clip(f, limit);
            bristle[a] = f;
            torque[a] = -f;
        }
        double furthest = 0;
        for (int m = 0; m < axles.motors; m++) {
            int a = axles.motorAxle[m];
            int body = axles.motorBody[m];
            double carried = body < 0 ? 0 : body == 2 ? th : tc;
            double lag = axles.poles[m] * (command[m] - (angle[a] - carried));
            double far = Math.abs(lag);
            furthest = far > furthest ? far : furthest;
            double t =
                    axles.curve[m].at(commandRate[m]) * FieldSine.of(lag)
                            + axles.motorDamping[m] * (commandRate[m] - predicted[a]);
            motorTorque[m] = t;
            torque[a] += t;
            if (body == 2) {
                fth -= t;
            } else if (body == 5) {
                ftc -= t;
            }
        }
        largestLag = furthest;
        for (int k = 0; k < axles.shafts; k++) {
            int a = axles.shaftFirst[k];
            int b = axles.shaftSecond[k];
            double t =
                    axles.shaftStiffness[k]
                            * (angle[a] - angle[b] + guideDamping * (predicted[a] - predicted[b]));
            torque[a] -= t;
            torque[b] += t;
        }
    }

    /** Blocks and friction of the two leg rails. */
    private void evaluateLegs(double uxb, double uth, double h) {
        double sideX = 0;
        double yawMoment = 0;
        double left = 0;
        double right = 0;
        for (int j = 0; j < guide.lateralCount; j++) {
            double lever = oby + guide.along[j];
            double x = xb + obx - lever * th + guide.along[j] * squareness;
            double free = guide.lateralPlay[j];
            double d = x - clip(x, free);
            double f = guide.lateralStiffness[j] * (d + guideDamping * (uxb - lever * uth));
            sideX -= f;
            yawMoment += f * lever;
            if (guide.rail[j] == 0) {
                left += Math.abs(f);
            } else {
                right += Math.abs(f);
            }
        }
        double yaw = th - squareness;
        for (int j = 0; j < guide.yawCount; j++) {
            double free = guide.yawPlay[j];
            double d = yaw - clip(yaw, free);
            yawMoment -= guide.yawStiffness[j] * (d + guideDamping * uth);
        }
        guideMoment = yawMoment;
        railForce[0] = left;
        railForce[1] = right;
        fxb += sideX;
        double armLeft = obx - halfSpan;
        double armRight = obx + halfSpan;
        double limitLeft = leftFriction + railMu * left;
        double limitRight = rightFriction + railMu * right;
        double fl = bristleLeft + STICK * h * (vyb + armLeft * vth);
        double fr = bristleRight + STICK * h * (vyb + armRight * vth);
        fl = clip(fl, limitLeft);
        fr = clip(fr, limitRight);
        bristleLeft = fl;
        bristleRight = fr;
        fyb -= fl + fr;
        fth += yawMoment - fl * armLeft - fr * armRight;
    }

    /** Blocks, beam and friction of the carriage on the bridge. */
    private void evaluateCarriage(
            double uxb, double uyb, double uth, double uxc, double uyc, double utc, double h) {
        // s = Xo - Xg, c = Yo - Yg - s theta
        double s = xc + ocx - ocy * tc - xb - obx + oby * th;
        double us = uxc - ocy * utc - uxb + oby * uth;
        double c = yc + ocy + ocx * tc - yb - oby - obx * th - s * th;
        double uc = uyc + ocx * utc - uyb - obx * uth - us * th - s * uth;
        double psi = tc - th;
        double dc = c - clip(c, carriageLateralPlay);
        double dpsi = psi - clip(psi, carriageYawPlay);
        dc += guideDamping * uc;
        dpsi += guideDamping * (utc - uth);
        double c11 = lateralCompliance;
        double c12 = 0;
        double c22 = yawCompliance;
        if (beamFlexibility > 0) {
            // Simply supported beam under a force and a moment at a, b from its ends.
            double a = halfSpan + s;
            double b = halfSpan - s;
            c11 += beamFlexibility * a * a * b * b;
            c12 = beamFlexibility * a * b * (b - a);
            c22 += beamFlexibility * (a * a - a * b + b * b) * 2 * halfSpan;
        }
        double inverse = 1 / (c11 * c22 - c12 * c12);
        double n = (c22 * dc - c12 * dpsi) * inverse;
        double m = (c11 * dpsi - c12 * dc) * inverse;
        carriageForce = n;
        carriageMoment = m;
        carriagePlace = s;
        double limit = carriageFriction + carriageMu * Math.abs(n);
        double f = bristleCarriage + STICK * h * (vxc - ocy * vtc - vxb + oby * vth);
        f = clip(f, limit);
        bristleCarriage = f;
        fxc += n * th - f;
        fxb += f - n * th;
        fyc -= n;
        fyb += n;
        ftc += f * ocy - n * (ocx + th * ocy) - m;
        fth += n * (obx + s + th * oby) + m - f * oby;
    }

    private void evaluateBelts(
            double uxb, double uyb, double uth, double uxc, double uyc, double utc) {
        BeltArrays b = belts;
        double[] tension = this.tension;
        double[] angle = this.angle;
        double[] torque = this.torque;
        double[] predicted = this.predicted;
        double xb = this.xb;
        double yb = this.yb;
        double th = this.th;
        double xc = this.xc;
        double yc = this.yc;
        double tc = this.tc;
        double x = carriagePlace;
        double y = yb + oby;
        double px = 0;
        double py = 0;
        double pt = 0;
        double cx = 0;
        double cy = 0;
        double ct = 0;
        double[] data = b.data;
        int[] ends = b.ends;
        for (int i = 0, k = 0; i < tension.length; i++, k += BeltArrays.STRIDE) {
            double g0 = data[k];
            double g1 = data[k + 1];
            double g2 = data[k + 2];
            double g3 = data[k + 3];
            double g4 = data[k + 4];
            double g5 = data[k + 5];
            double sArm = data[k + 7];
            double eArm = data[k + 8];
            int sa = ends[2 * i];
            int ea = ends[2 * i + 1];
            double e =
                    (data[k + 6] + g1 * yb + g4 * yc)
                            + (g0 * xb + g3 * xc)
                            + (g2 * th + g5 * tc)
                            + (sArm * angle[sa] + eArm * angle[ea]);
            double u =
                    (g0 * uxb + g3 * uxc)
                            + (g1 * uyb + g4 * uyc)
                            + (g2 * uth + g5 * utc)
                            + (sArm * predicted[sa] + eArm * predicted[ea]);
            double k0 = data[k + 10] / (data[k + 11] + data[k + 12] * x + data[k + 13] * y);
            double t = data[k + 9] + k0 * (e + beltDamping * u);
            t = t < 0 ? 0 : t;
            tension[i] = t;
            px += t * g0;
            py += t * g1;
            pt += t * g2;
            cx += t * g3;
            cy += t * g4;
            ct += t * g5;
            torque[sa] -= t * sArm;
            torque[ea] -= t * eArm;
        }
        fxb -= px;
        fyb -= py;
        fth -= pt + b.pretensionStiffness * th;
        fxc -= cx;
        fyc -= cy;
        ftc -= ct;
    }

    /** One step of h with the forces of the last evaluation [s]. */
    public void advance(double h) {
        axb = fxb * perMassXb;
        ayb = fyb * perMassYb;
        ath = fth * perInertiaB;
        axc = fxc * perMassXc;
        ayc = fyc * perMassYc;
        atc = ftc * perInertiaC;
        vxb += h * axb;
        vyb += h * ayb;
        vth += h * ath;
        vxc += h * axc;
        vyc += h * ayc;
        vtc += h * atc;
        xb += h * vxb;
        yb += h * vyb;
        th += h * vth;
        xc += h * vxc;
        yc += h * vyc;
        tc += h * vtc;
        for (int a = 0; a < axles.count; a++) {
            double acc = torque[a] * axles.perInertia[a];
            acceleration[a] = acc;
            double v = rate[a] + h * acc;
            rate[a] = v;
            angle[a] += h * v;
        }
        torque[axles.count] = 0;
    }

    public GantryModel model() {
        return model;
    }

    /** Relation of axle angles and the place of the carriage. */
    public MotionRelation relation() {
        return relation;
    }

    /** Belts, with their geometry. */
    public BeltSystem system() {
        return system;
    }

    /** Skew: yaw of the bridge [rad]. */
    public double skew() {
        return th;
    }

    /** Tool across the rails [m, base frame]. */
    public double toolX() {
        return xc + toolArmX - toolArmY * tc;
    }

    /** Tool along the rails [m, base frame]. */
    public double toolY() {
        return yc + toolArmY + toolArmX * tc;
    }

    public int sections() {
        return belts.count;
    }

    /** Tension of a section at the last evaluation [N]. */
    public double tension(int section) {
        return tension[section];
    }

    public int motors() {
        return axles.motors;
    }

    /** Torque of the field on a rotor at the last evaluation [N m]. */
    public double motorTorque(int motor) {
        return motorTorque[motor];
    }

    /** Whole periods of four full steps by which a rotor has slipped. */
    public long slippedPeriods(int motor) {
        int body = axles.motorBody[motor];
        double carried = body < 0 ? 0 : body == 2 ? th : tc;
        double lag = command[motor] - (angle[axles.motorAxle[motor]] - carried);
        return Math.round(lag * axles.poles[motor] / (2 * Math.PI));
    }

    /** Largest angle of a field before its rotor at the last evaluation, electrical [rad]. */
    public double largestLag() {
        return largestLag;
    }

    /** Yaw moment of the leg rails on the bridge at the last evaluation [N m]. */
    public double guideMoment() {
        return guideMoment;
    }

    /** Force of the bridge rail across itself on the carriage, reversed sign [N]. */
    public double carriageForce() {
        return carriageForce;
    }

    /** Yaw moment between bridge rail and carriage [N m]. */
    public double carriageMoment() {
        return carriageMoment;
    }

    /** Place of the carriage on the bridge [m]. */
    public double carriagePlace() {
        return carriagePlace;
    }

    /** Place of the bridge along the rails [m]. */
    public double bridgePlace() {
        return yb + oby + obx * th;
    }

    /** Numbers that {@link #save} writes. */
    public int savedSize() {
        return 33 + 6 * angle.length + tension.length + 3 * axles.motors;
    }

    /** Writes state and results of the last evaluation; allocates nothing. */
    public void save(double[] out) {
        out[0] = xb;
        out[1] = yb;
        out[2] = th;
        out[3] = xc;
        out[4] = yc;
        out[5] = tc;
        out[6] = vxb;
        out[7] = vyb;
        out[8] = vth;
        out[9] = vxc;
        out[10] = vyc;
        out[11] = vtc;
        out[12] = axb;
        out[13] = ayb;
        out[14] = ath;
        out[15] = axc;
        out[16] = ayc;
        out[17] = atc;
        out[18] = fxb;
        out[19] = fyb;
        out[20] = fth;
        out[21] = fxc;
        out[22] = fyc;
        out[23] = ftc;
        out[24] = bristleLeft;
        out[25] = bristleRight;
        out[26] = bristleCarriage;
        out[27] = guideMoment;
        out[28] = carriageForce;
        out[29] = carriageMoment;
        out[30] = carriagePlace;
        out[31] = largestLag;
        out[32] = sinceRenewal;
        int at = 33;
        for (double[] part : parts) {
            System.arraycopy(part, 0, out, at, part.length);
            at += part.length;
        }
    }

    /** Takes back what {@link #save} wrote. */
    public void restore(double[] in) {
        xb = in[0];
        yb = in[1];
        th = in[2];
        xc = in[3];
        yc = in[4];
        tc = in[5];
        vxb = in[6];
        vyb = in[7];
        vth = in[8];
        vxc = in[9];
        vyc = in[10];
        vtc = in[11];
        axb = in[12];
        ayb = in[13];
        ath = in[14];
        axc = in[15];
        ayc = in[16];
        atc = in[17];
        fxb = in[18];
        fyb = in[19];
        fth = in[20];
        fxc = in[21];
        fyc = in[22];
        ftc = in[23];
        bristleLeft = in[24];
        bristleRight = in[25];
        bristleCarriage = in[26];
        guideMoment = in[27];
        carriageForce = in[28];
        carriageMoment = in[29];
        carriagePlace = in[30];
        largestLag = in[31];
        sinceRenewal = (int) in[32];
        int at = 33;
        for (double[] part : parts) {
            System.arraycopy(in, at, part, 0, part.length);
            at += part.length;
        }
    }
}
