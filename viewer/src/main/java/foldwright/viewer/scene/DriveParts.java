// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.lift.LiftNames;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.Direct;
import foldwright.machine.drive.HandCrank;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.drive.StepperDrive;
import foldwright.machine.linkage.OnBase;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import java.util.ArrayList;
import java.util.List;
import org.joml.Matrix4x3f;

/**
 * Screws with nuts and bearings, motors, and the belt that joins them.
 *
 * <p>The file says where screws lie across the machine; along it, the bearing is put as far out as
 * the base reaches and the nut's way allows. Screws run along x and turn about it.
 */
final class DriveParts {
    private static final double WALL = 0.005;

    private final Machine machine;
    private final LiftShape shape;
    private final PartList out;
    private final double pin;
    private double[] nutWay;

    /** What turns with the drive: body, radians a metre of foot travel, and its place. */
    record Turning(int body, double perTravel, double phase, double x, double y, double z) {}

    private final List<Turning> turning = new ArrayList<>();
    private int beltChannel = -1;
    private double beltPerTravel;
    private Overhang overhang = Overhang.NONE;

    DriveParts(Machine machine, LiftShape shape, PartList out) {
        this.machine = machine;
        this.shape = shape;
        this.out = out;
        pin = machine.base().pinHeight();
    }

    List<Turning> turning() {
        return turning;
    }

    /** What of the drive stands out beyond the base. */
    Overhang overhang() {
        return overhang;
    }

    int beltChannel() {
        return beltChannel;
    }

    /** Belt run a metre of foot travel [m/m]. */
    double beltPerTravel() {
        return beltPerTravel;
    }

    void add() {
        LiftShape.Joints j = shape.joints();
        shape.solve(shape.flat(), j);
        double far = j.slidingX[0];
        shape.solve(shape.top(), j);
        nutWay = new double[] {j.slidingX[0], far};
        double end = bearingX();
        int index = 1;
        List<double[]> screws = new ArrayList<>();
        for (ScrewLine line : machine.drive().lines()) {
            double x =
                    line.from()
                            .filter(OnBase.class::isInstance)
                            .map(a -> ((OnBase) a).at().x())
                            .orElse(end);
            double z =
                    line.from()
                            .filter(OnBase.class::isInstance)
                            .map(a -> ((OnBase) a).at().z())
                            .orElse(0.0);
            screw(line, index, x, z);
            screws.add(new double[] {x, line.y(), z});
            index++;
        }
        if (machine.drive().transmission() instanceof BeltReduction belt) {
            DriveBelt drive =
                    new DriveBelt(belt, machine.drive().screw().thread().lead(), out, turning);
            double[] motor = drive.add(screws, travelSign(screws.get(0)[0]));
            beltChannel = drive.channel();
            beltPerTravel = drive.perTravel();
            source(motor, travelSign(screws.get(0)[0]));
        } else if (machine.drive().source() instanceof HandCrank hand) {
            crank(hand, turning.get(0), screws.get(0)[0], travelSign(screws.get(0)[0]));
        } else {
            for (int i = 0; i < machine.drive().motors(); i++) {
                double[] s = screws.get(Math.min(i, screws.size() - 1));
                directMotor(i + 1, s);
            }
        }
    }

    /** Face of a motor of the frame size in tenths of an inch, a little less as usual [m]. */
    static double face(int frameSize) {
        return frameSize * 0.00249;
    }

    /** Face of a motor, nothing of a crank: it stands outside of the base [m]. */
    private double motorFace() {
        return machine.drive().source() instanceof StepperDrive d ? face(d.motor().frameSize()) : 0;
    }

    private double bearingX() {
        double room = machine.base().length() - machine.base().pinInset() - 0.030;
        double reach = nutWay[0] - 0.012 + machine.drive().screw().length();
        double motor = machine.drive().transmission() instanceof Direct ? motorFace() : 0;
        return Math.max(nutWay[1] + 0.012, Math.min(room - motor, reach));
    }

    private double travelSign(double x) {
        return x >= nutWay[1] ? 1 : -1;
    }

    private void screw(ScrewLine line, int index, double x, double z) {
        var thread = machine.drive().screw().thread();
        double r = thread.majorDiameter() / 2;
        double sign = travelSign(x);
        double length = machine.drive().screw().length();
        int body = out.bodies.of(LiftNames.screw(index));
        Mesh rod =
                new Solid()
                        .zone(Zone.THREAD)
                        .at(0, 0, 0)
                        .alongX()
                        .bar(r, sign > 0 ? -length : 0, sign > 0 ? 0 : length, 18)
                        .zone(Zone.STEEL)
                        .bar(0.75 * r, sign > 0 ? 0 : -0.024, sign > 0 ? 0.024 : 0, 14)
                        .mesh();
        out.add(
                LiftNames.screw(index),
                PartKind.SCREW,
                rod,
                body,
                new Matrix4x3f(),
                -1,
                thread.lead());
        turning.add(
                new Turning(body, 2 * Math.PI / thread.lead(), line.phaseError(), x, line.y(), z));
        nut(line, index, r, z);
        double half = Math.max(1.7 * r, 0.009);
        bearing("screw bearing " + index, sign > 0 ? x + 0.002 : x - 0.014, line.y(), z, half);
    }

    /** A block on the base about a shaft at y, z, from x on [m]. */
    private void bearing(String name, double x, double y, double z, double half) {
        Mesh block =
                new Solid()
                        .zone(Zone.PLASTIC)
                        .box(x, y - half, WALL - pin, x + 0.012, y + half, z + half)
                        .mesh();
        out.add(name, PartKind.BASE, block, out.bodies.of(Bodies.BASE));
    }

    private void nut(ScrewLine line, int index, double r, double z) {
        double half = Math.max(1.6 * r, 0.008);
        double length = machine.drive().screw().nut().length();
        Solid solid =
                new Solid()
                        .zone(Zone.BRONZE)
                        .box(
                                -length / 2,
                                line.y() - half,
                                z - half,
                                length / 2,
                                line.y() + half,
                                z + half);
        // The cross bar that joins the nut to both slider ends.
        boolean inside = Math.abs(line.y()) < shape.inside();
        if (inside && machine.drive().lines().size() <= 2) {
            double near = shape.inside();
            double toY = line.y() > 0 ? near : -near;
            double from =
                    line.y() == 0 ? -near : Math.min(line.y() + Math.signum(line.y()) * half, toY);
            double to =
                    line.y() == 0 ? near : Math.max(line.y() + Math.signum(line.y()) * half, toY);
            if (line.y() == 0) {
                barPiece(solid, from, -half, z);
                barPiece(solid, half, to, z);
            } else {
                barPiece(solid, from, to, z);
            }
        }
        out.add(LiftNames.nut(index), PartKind.NUT, solid.mesh(), out.bodies.of(Bodies.FOOT));
    }

    private static void barPiece(Solid solid, double from, double to, double z) {
        if (to - from > 0.001) {
            solid.zone(Zone.STEEL).at(0, 0, 0).box(-0.004, from, z - 0.004, 0.004, to, z + 0.004);
            solid.zone(Zone.BRONZE);
        }
    }

    private Mesh motorBody(double face, double length) {
        double h = face / 2;
        double c = 0.12 * face;
        return new Solid()
                .zone(Zone.MOTOR)
                .at(0, 0, 0)
                .alongX()
                .plate(-h, -h, h, h, c, 0.16 * length, 0.84 * length)
                .zone(Zone.ALUMINIUM)
                .plate(-h, -h, h, h, 0.7 * c, 0, 0.16 * length)
                .plate(-h, -h, h, h, 0.7 * c, 0.84 * length, length)
                .bar(0.26 * face, -0.002, 0, 22)
                .mesh();
    }

    /**
     * What drives the belt, inside of its pulley: a motor, or a bearing through which the shaft of
     * a crank goes out.
     *
     * @param at where its flange is, x, y, z [m]
     * @param sense side of the flange on which the belt runs
     */
    private void source(double[] at, double sense) {
        if (machine.drive().source() instanceof HandCrank hand) {
            double inside = at[0] - sense * 0.012;
            bearing("crank bearing", Math.min(inside, at[0]), at[1], at[2], 0.009);
            // The motor pulley is the last thing that was given to turn.
            crank(hand, turning.get(turning.size() - 1), inside, sense);
        } else {
            motorAt(1, at[0], at[1], at[2], -sense);
        }
    }

    private void crank(HandCrank hand, Turning turned, double from, double sense) {
        Crank crank = new Crank(hand, machine, out);
        crank.add(turned, from, sense);
        overhang = sense > 0 ? crank.overhang() : Overhang.NONE;
    }

    private void directMotor(int index, double[] at) {
        double face = motorFace();
        double sign = travelSign(at[0]);
        double z = Math.max(at[2], face / 2 + WALL - pin);
        motorAt(index, at[0] + sign * 0.022, at[1], z, sign);
    }

    /** A motor whose flange is at x and whose body reaches along x in this sense. */
    private void motorAt(int index, double x, double y, double z, double sense) {
        double face = motorFace();
        Matrix4x3f place = PartList.at(x, y, z);
        if (sense < 0) {
            place.rotateZ((float) Math.PI);
        }
        out.add(
                LiftNames.motor(index),
                PartKind.MOTOR,
                motorBody(face, 0.9 * face),
                out.bodies.of(Bodies.BASE),
                place);
    }

    /** Writes screws and pulleys turned by the foot travel [m]. */
    static void place(List<Turning> turning, double pinHeight, double travel, Pose pose) {
        for (int i = 0; i < turning.size(); i++) {
            Turning t = turning.get(i);
            pose.body[t.body]
                    .translation((float) t.x, (float) t.y, (float) (pinHeight + t.z))
                    .rotateX((float) (t.perTravel * travel + t.phase));
        }
    }
}
