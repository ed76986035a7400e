// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Pose;
import foldwright.gantry.route.Section;
import foldwright.gantry.route.Travel;
import java.util.List;

/**
 * The sections of belt as flat arrays: extension = offset + row.q + arms.angles, length = l0 + lx s
 * + ly y. Where rows change over the travel they are renewed from the exact geometry at the place
 * where the kernel stands; the offset then takes the exact extension, so nothing drifts.
 */
final class BeltArrays {
    /** Rows that change less than this over the travel count as constant: rounded wheel places. */
    private static final double CONSTANT = 1e-4;

    /** Skew at which the stiffness of the pretension is measured [rad]. */
    private static final double PROBE = 1e-3;

    /** Numbers of a section in {@link #data}: row, offset, arms, pretension, EA, length law. */
    static final int STRIDE = 14;

    final int count;

    /** What a step reads, section after section, in the order of {@link #STRIDE}. */
    final double[] data;

    /** Axle at the start and at the end of each section. */
    final int[] ends;

    final double[] row;
    final double[] offset;
    final int[] startAxle;
    final double[] startArm;
    final int[] endAxle;
    final double[] endArm;
    final double[] pretension;
    final double[] ea;
    final double[] length0;
    final double[] lengthX;
    final double[] lengthY;
    final boolean constant;

    /**
     * Yaw stiffness that comes from the pretension itself, the belts pulling the bridge at points
     * ahead of and behind its centre; 0 where rows are renewed, for then it is in them [N m/rad].
     */
    final double pretensionStiffness;

    private final BeltSystem system;
    private final BodyMass bridge;
    private final BodyMass carriage;
    private final double[] scratch;
    private final double[] still;

    BeltArrays(BeltSystem system, GantryModel model) {
        this.system = system;
        bridge = model.bridge();
        carriage = model.carriage();
        List<Section> sections = system.sections();
        count = sections.size();
        data = new double[STRIDE * count];
        ends = new int[2 * count];
        row = new double[6 * count];
        offset = new double[count];
        startAxle = new int[count];
        startArm = new double[count];
        endAxle = new int[count];
        endArm = new double[count];
        pretension = new double[count];
        ea = new double[count];
        length0 = new double[count];
        lengthX = new double[count];
        lengthY = new double[count];
        int axles = system.axleNames().size();
        scratch = new double[BeltSystem.POSE_COLUMNS + axles];
        still = new double[axles];
        for (int i = 0; i < count; i++) {
            Section s = sections.get(i);
            // Ends without an axle read a spare entry that always holds zero.
            startAxle[i] = s.startAxle() < 0 ? axles : s.startAxle();
            endAxle[i] = s.endAxle() < 0 ? axles : s.endAxle();
            startArm[i] = s.startAxle() < 0 ? 0 : s.startArm();
            endArm[i] = s.endAxle() < 0 ? 0 : s.endArm();
            pretension[i] = model.layout().belts().get(s.belt()).pretension();
            ea[i] = model.layout().belts().get(s.belt()).stiffness();
        }
        constant = measureLengths();
        for (int i = 0; i < count; i++) {
            int at = STRIDE * i;
            data[at + 7] = startArm[i];
            data[at + 8] = endArm[i];
            data[at + 9] = pretension[i];
            data[at + 10] = ea[i];
            data[at + 11] = length0[i];
            data[at + 12] = lengthX[i];
            data[at + 13] = lengthY[i];
            ends[2 * i] = startAxle[i];
            ends[2 * i + 1] = endAxle[i];
        }
        pretensionStiffness = constant ? measureStiffness() : 0;
        Pose centre = system.reference();
        renew(
                centre.bridgeX() + bridge.centreX(),
                centre.bridgeY() + bridge.centreY(),
                0,
                centre.carriageX() + carriage.centreX(),
                centre.carriageY() + carriage.centreY(),
                0);
    }

    /** Fits lengths linearly over the travel; true where rows and lengths are constant in slope. */
    private boolean measureLengths() {
        Travel t = system.layout().travel();
        Pose centre = system.reference();
        double[][] rows = new double[count][scratch.length];
        double[] middle = new double[count];
        system.place(centre);
        for (int i = 0; i < count; i++) {
            system.gradient(i, rows[i]);
            middle[i] = system.length(i);
        }
        double[] low = lengths(Pose.at(t.xMin(), t.yMid()));
        double[] high = lengths(Pose.at(t.xMax(), t.yMid()));
        double[] near = lengths(Pose.at(t.xMid(), t.yMin()));
        double[] far = lengths(Pose.at(t.xMid(), t.yMax()));
        for (int i = 0; i < count; i++) {
            lengthX[i] = (high[i] - low[i]) / (t.xMax() - t.xMin());
            lengthY[i] = (far[i] - near[i]) / (t.yMax() - t.yMin());
            length0[i] = middle[i] - lengthX[i] * t.xMid() - lengthY[i] * t.yMid();
        }
        return sameRows(rows, Pose.at(t.xMin(), t.yMin()))
                && sameRows(rows, Pose.at(t.xMax(), t.yMax()));
    }

    /** Second derivative of the tensions' work along a skew of bridge and carriage together. */
    private double measureStiffness() {
        Pose c = system.reference();
        double sum = 0;
        for (int i = 0; i < count; i++) {
            system.place(c);
            double middle = system.extension(i, still);
            system.place(Pose.skewed(c.carriageX(), c.carriageY(), PROBE));
            double left = system.extension(i, still);
            system.place(Pose.skewed(c.carriageX(), c.carriageY(), -PROBE));
            double right = system.extension(i, still);
            sum += pretension[i] * (left - 2 * middle + right) / (PROBE * PROBE);
        }
        return sum;
    }

    private double[] lengths(Pose pose) {
        system.place(pose);
        double[] l = new double[count];
        for (int i = 0; i < count; i++) {
            l[i] = system.length(i);
        }
        return l;
    }

    /** Pose columns about the bodies' origins do not change when a belt only shifts along. */
    private boolean sameRows(double[][] rows, Pose pose) {
        system.place(pose);
        for (int i = 0; i < count; i++) {
            system.gradient(i, scratch);
            for (int k = 0; k < scratch.length; k++) {
                if (Math.abs(scratch[k] - rows[i][k]) > CONSTANT) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Takes rows and offsets from the geometry at a pose of the centres of mass. */
    void renew(double xb, double yb, double yaw, double xc, double yc, double yawC) {
        double bx = xb - bridge.centreX() + yaw * bridge.centreY();
        double by = yb - bridge.centreY() - yaw * bridge.centreX();
        double cx = xc - carriage.centreX() + yawC * carriage.centreY();
        double cy = yc - carriage.centreY() - yawC * carriage.centreX();
        system.place(bx, by, yaw, cx, cy, yawC);
        for (int i = 0; i < count; i++) {
            system.gradient(i, scratch);
            double g0 = scratch[0];
            double g1 = scratch[1];
            double g3 = scratch[3];
            double g4 = scratch[4];
            int at = 6 * i;
            System.arraycopy(scratch, 0, row, at, 6);
            // Origin = centre of mass - turned offset: dx/dyaw = +offsetY, dy/dyaw = -offsetX.
            row[at + 2] += g0 * bridge.centreY() - g1 * bridge.centreX();
            row[at + 5] += g3 * carriage.centreY() - g4 * carriage.centreX();
            offset[i] =
                    system.extension(i, still)
                            - g0 * xb
                            - g1 * yb
                            - row[at + 2] * yaw
                            - g3 * xc
                            - g4 * yc
                            - row[at + 5] * yawC;
            System.arraycopy(row, at, data, STRIDE * i, 6);
            data[STRIDE * i + 6] = offset[i];
        }
    }
}
