// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.CurvePoint.Pose;
import foldwright.lift.DriveTrain.ScrewTorque;
import foldwright.mechanics.body.State;
import foldwright.mechanics.solve.Equilibrium;

/** Turns a balance of loads at one height into a point of the force curve. */
final class PointMaker {
    private final LiftModel model;
    private final DriveTrain train;
    private final Powers powers;
    private final PartLoads parts;
    private final double whirlSpeed;
    private final ScrewStrength strength;

    PointMaker(LiftModel model, DriveTrain train) {
        this.model = model;
        this.train = train;
        this.powers = new Powers(model);
        this.parts = new PartLoads(model);
        this.strength = new ScrewStrength(model.machine().drive().screw());
        this.whirlSpeed = strength.whirlSpeed();
    }

    /**
     * A point of the curve.
     *
     * @param balance loads
     * @param shape ideal shape at the height
     * @param way direction
     * @param deckSpeed asked for, positive [m/s]
     */
    CurvePoint point(Equilibrium balance, Scissor.Shape shape, Direction way, double deckSpeed) {
        State s = balance.state();
        double[] linkage = powers.of(balance, s).clone();
        double perTravel = shape.heightPerTravel();
        double footSpeed = deckSpeed / perTravel;
        double flatFoot = model.flat().foot();
        Pose pose =
                new Pose(
                        way,
                        shape.height(),
                        shape.angle(1),
                        deckSpeed,
                        flatFoot - shape.foot(),
                        perTravel);
        Shares foot = Shares.ofPowers(linkage, way.sign() * footSpeed);
        Drive drive = drive(balance, s, linkage, pose);
        return new CurvePoint(
                pose,
                foot.total(),
                foot,
                drive.screw,
                drive.motor,
                drive.shares,
                parts.read(balance, s));
    }

    private record Drive(ScrewLoad screw, MotorLoad motor, Shares shares) {}

    private Drive drive(Equilibrium balance, State s, double[] linkage, Pose pose) {
        int n = model.screws().size();
        double[] needed = new double[train.motors()];
        double[] useful = new double[train.motors()];
        double[] thread = new double[train.motors()];
        double[] collar = new double[train.motors()];
        double nutSpeed = 0;
        ScrewLoad worst = null;
        for (int i = 0; i < n; i++) {
            ScrewPart part = model.screws().get(i);
            double rate = part.length().rate(s);
            double axial = balance.load(part.row());
            ScrewTorque torque = train.turn(axial * Math.signum(rate));
            int m = train.motorOf(i);
            useful[m] += torque.useful();
            thread[m] += torque.thread();
            collar[m] += torque.collar();
            nutSpeed = Math.max(nutSpeed, Math.abs(rate));
            if (worst == null || Math.abs(torque.total()) > Math.abs(worst.torque())) {
                worst = screwLoad(part, axial, torque.total(), s);
            }
        }
        double speed = train.motorSpeed(nutSpeed);
        double inertia = rotorTorque(pose);
        int busiest = 0;
        for (int m = 0; m < needed.length; m++) {
            needed[m] = train.motorTorque(useful[m] + thread[m] + collar[m]) + inertia;
            busiest = Math.abs(needed[m]) > Math.abs(needed[busiest]) ? m : busiest;
        }
        MotorLoad motor = new MotorLoad(needed[busiest], speed, train.available(speed));
        Shares shares = Shares.ofPowers(scaled(linkage, useful[busiest], speed), speed);
        double ratio = train.ratio();
        double screws = useful[busiest] + thread[busiest] + collar[busiest];
        shares =
                shares.with(Cause.THREAD, thread[busiest] / ratio)
                        .with(Cause.COLLAR, collar[busiest] / ratio)
                        .with(Cause.BELT, train.motorTorque(screws) - screws / ratio)
                        .with(Cause.INERTIA, shares.of(Cause.INERTIA) + inertia);
        return new Drive(worst, motor, shares);
    }

    /**
     * Linkage powers of one motor: its part of the whole by the useful torque it gives; the parts
     * are equal where the whole is nothing.
     */
    private double[] scaled(double[] linkage, double useful, double motorSpeed) {
        double whole = 0;
        for (double p : linkage) {
            whole += p;
        }
        double own = useful / train.ratio() * motorSpeed;
        double size = 0;
        for (double p : linkage) {
            size += Math.abs(p);
        }
        boolean clear = Math.abs(whole) > 1e-9 * size;
        double share = clear ? own / whole : 1.0 / train.motors();
        double[] scaled = new double[linkage.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = share * linkage[i];
        }
        return scaled;
    }

    /** Torque that speeds a rotor up as the nut must go faster or slower for a steady deck. */
    private double rotorTorque(Pose pose) {
        NutPath path = model.path(0);
        double rate = path.rate(pose.height());
        double change = path.acceleration(pose.height()) * Math.signum(rate);
        double speed = pose.deckSpeed();
        double acceleration = train.motorSpeed(1) * change * speed * speed;
        return pose.direction().sign() * train.rotorInertia() * acceleration;
    }

    private ScrewLoad screwLoad(ScrewPart part, double axial, double torque, State s) {
        double length = part.length().value(s);
        return new ScrewLoad(
                part.raisingForce(axial),
                torque,
                train.screwSpeed(Math.abs(part.length().rate(s))),
                length,
                axial > 0 ? strength.buckling(length).force() : Double.POSITIVE_INFINITY,
                whirlSpeed,
                train.nutPressure(axial));
    }
}
