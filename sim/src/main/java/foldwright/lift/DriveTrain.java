// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.motor.ElectricalPullOut;
import foldwright.elements.motor.HybridStepper;
import foldwright.elements.motor.MeasuredPullOut;
import foldwright.elements.motor.PullOut;
import foldwright.elements.screw.Collar;
import foldwright.elements.screw.Nut;
import foldwright.elements.screw.ScrewThread;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.Drive;
import foldwright.machine.drive.HandCrank;
import foldwright.machine.drive.MotorCount;
import foldwright.machine.drive.StepperDrive;
import foldwright.machine.part.PullOutPoints;
import foldwright.machine.part.Stepper;
import foldwright.machine.part.Winding;

/**
 * The chain nut - screw - collar - belt - motor in closed form: torques for nut forces, speeds for
 * nut speeds, and what the motor can give.
 *
 * <p>Thread by Shigley Eqs. 8-5 and 8-6 (friction at the pitch diameter), collar by Coulomb
 * friction at its mean diameter, belt by one efficiency whichever way power flows. Losses always
 * oppose the motion. A motor that has several screws carries their sum. Immutable.
 */
public final class DriveTrain {
    private static final double TURN = 2 * Math.PI;

    private final ScrewThread thread;
    private final Nut nut;
    private final Collar collar;
    private final double lead;
    private final double friction;
    private final double ratio;
    private final double efficiency;
    private final double rotorInertia;
    private final int motors;
    private final int screws;
    private final PullOut pullOut;
    private final double handTorque;

    /** The chain of a described drive. */
    public DriveTrain(Drive drive) {
        this(drive, drive.screw().nut().friction());
    }

    /** The same chain with another thread friction [1]. */
    public DriveTrain(Drive drive, double friction) {
        var screw = drive.screw();
        this.thread = thread(screw.thread());
        this.nut = Nut.of(thread, screw.nut().length());
        this.collar = new Collar(screw.collar().friction(), screw.collar().diameter());
        this.lead = screw.thread().lead();
        this.friction = friction;
        this.screws = drive.lines().size();
        if (drive.transmission() instanceof BeltReduction belt) {
            ratio = belt.teeth().ratio();
            efficiency = belt.efficiency();
        } else {
            ratio = 1;
            efficiency = 1;
        }
        if (drive.source() instanceof StepperDrive stepper) {
            motors = stepper.motors() == MotorCount.ONE_FOR_ALL ? 1 : screws;
            pullOut = pullOut(stepper.motor());
            rotorInertia = stepper.motor().rotorInertia();
            handTorque = 0;
        } else {
            HandCrank crank = (HandCrank) drive.source();
            motors = 1;
            pullOut = null;
            rotorInertia = 0;
            handTorque = crank.allowedForce() * crank.radius();
        }
    }

    /** Thread of the machine file as the law of threads wants it. */
    static ScrewThread thread(foldwright.machine.drive.ScrewThread t) {
        return new ScrewThread(
                t.majorDiameter(),
                t.pitchDiameter(),
                t.rootDiameter(),
                t.pitch(),
                t.starts(),
                t.flankAngle());
    }

    private static PullOut pullOut(Stepper motor) {
        if (motor.pullOut() instanceof PullOutPoints points) {
            return new MeasuredPullOut(
                    points.points().stream()
                            .map(p -> new MeasuredPullOut.Point(p.speed(), p.torque()))
                            .toList());
        }
        Winding w = (Winding) motor.pullOut();
        var hybrid =
                new HybridStepper(
                        motor.holdingTorque(),
                        w.current(),
                        w.resistance(),
                        w.inductance(),
                        motor.stepsPerTurn() / 4,
                        motor.rotorInertia(),
                        motor.detentTorque());
        return new ElectricalPullOut(
                hybrid, foldwright.elements.motor.StepperDrive.rated(hybrid, w.supplyVoltage()));
    }

    /** The thread. */
    public ScrewThread thread() {
        return thread;
    }

    /** Thread friction it reckons with [1]. */
    public double friction() {
        return friction;
    }

    /** Travel of a nut a turn of its screw [m]. */
    public double lead() {
        return lead;
    }

    /** Motor turns a screw turn [1]. */
    public double ratio() {
        return ratio;
    }

    /** Efficiency between motor and screws [1]. */
    public double efficiency() {
        return efficiency;
    }

    /** Number of motors or cranks. */
    public int motors() {
        return motors;
    }

    /** Number of screws. */
    public int screws() {
        return screws;
    }

    /** Motor that turns screw i = 0, 1, ... */
    public int motorOf(int screw) {
        return motors == 1 ? 0 : screw;
    }

    /** Inertia of one rotor [kg·m²]. */
    public double rotorInertia() {
        return rotorInertia;
    }

    /** Screw speed for a nut speed [rad/s]. */
    public double screwSpeed(double nutSpeed) {
        return nutSpeed * TURN / lead;
    }

    /** Motor speed for a nut speed [rad/s]. */
    public double motorSpeed(double nutSpeed) {
        return screwSpeed(nutSpeed) * ratio;
    }

    /** Pull-out torque at a motor speed, or what a hand is asked for at most [N·m]. */
    public double available(double motorSpeed) {
        return pullOut == null ? handTorque : pullOut.torque(motorSpeed);
    }

    /** Fastest speed at which the motor has any torque [rad/s]. */
    public double fastest() {
        return pullOut == null ? Double.POSITIVE_INFINITY : pullOut.fastest();
    }

    /**
     * Torque that turns a screw in the sense of its motion.
     *
     * @param force along the motion of the nut, from screw to nut: positive when the screw drives
     *     the nut against its load, negative when the load pushes on [N]
     */
    public ScrewTorque turn(double force) {
        double useful = force * lead / TURN;
        double size = Math.abs(force);
        double whole =
                force >= 0
                        ? thread.raiseTorque(size, friction)
                        : thread.lowerTorque(size, friction);
        return new ScrewTorque(useful, whole - useful, collar.torque(size));
    }

    /** Mean flank pressure in the nut [Pa]. */
    public double nutPressure(double force) {
        return nut.pressure(Math.abs(force));
    }

    /** Torque a motor needs for the sum of torques on its screws [N·m]. */
    public double motorTorque(double screwTorque) {
        return screwTorque >= 0
                ? screwTorque / (ratio * efficiency)
                : screwTorque * efficiency / ratio;
    }

    /**
     * Torque on a screw in the sense of its motion, by what takes it [N·m].
     *
     * @param useful what reaches the nut as force
     * @param thread lost in the thread
     * @param collar lost at the collar
     */
    public record ScrewTorque(double useful, double thread, double collar) {
        /** The whole torque [N·m]. */
        public double total() {
            return useful + thread + collar;
        }
    }
}
