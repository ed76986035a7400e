// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Stiffness of what is in contact and taut at a kernel's state, over bridge x, y, yaw, carriage
 * along, across, twist, and chosen axles. Assembled, not differenced, because a difference smears a
 * contact that is pressed by less than its step. Symmetric and never negative.
 */
final class ActiveTangent {
    /** A field past its steepest still counts with this share, to keep Newton going downhill. */
    private static final double LEAST_COSINE = 0.05;

    private final GantryKernel k;
    private final int[] column;
    private final int size;
    private final double[] tether;

    ActiveTangent(GantryKernel kernel, int[] freeAxles) {
        k = kernel;
        size = 6 + freeAxles.length;
        column = new int[k.axles.count + 1];
        java.util.Arrays.fill(column, -1);
        for (int i = 0; i < freeAxles.length; i++) {
            column[freeAxles[i]] = 6 + i;
        }
        tether = springs();
    }

    /** Springs that hold the middle of play, by coordinate [N/m, N m/rad]. */
    double[] tether() {
        return tether;
    }

    private double[] springs() {
        double[] t = new double[6];
        GuideArrays g = k.guide;
        for (int j = 0; j < g.lateralCount; j++) {
            t[0] += g.lateralPlay[j] > 0 ? Statics.TETHER * g.lateralStiffness[j] : 0;
        }
        for (int j = 0; j < g.yawCount; j++) {
            t[2] += g.yawPlay[j] > 0 ? Statics.TETHER * g.yawStiffness[j] : 0;
        }
        BridgeGuide guide = k.model.bridgeGuide();
        if (t[2] == 0 && guide.freeYaw() > 0) {
            t[2] = Statics.TETHER * guide.yawStiffness();
        }
        t[4] = k.carriageLateralPlay > 0 ? Statics.TETHER / k.lateralCompliance : 0;
        t[5] = k.carriageYawPlay > 0 ? Statics.TETHER / k.yawCompliance : 0;
        return t;
    }

    RealMatrix at() {
        RealMatrix m = new Array2DRowRealMatrix(size, size);
        for (int d = 0; d < 6; d++) {
            m.addToEntry(d, d, tether[d]);
        }
        addBelts(m);
        addLegs(m);
        addCarriage(m);
        addMotors(m);
        for (int s = 0; s < k.axles.shafts; s++) {
            double[] row = new double[size];
            put(row, k.axles.shaftFirst[s], 1);
            put(row, k.axles.shaftSecond[s], -1);
            add(m, k.axles.shaftStiffness[s], row);
        }
        return m;
    }

    private void put(double[] row, int axle, double value) {
        if (column[axle] >= 0) {
            row[column[axle]] += value;
        }
    }

    private void add(RealMatrix m, double stiffness, double[] row) {
        for (int r = 0; r < size; r++) {
            if (row[r] != 0) {
                for (int c = 0; c < size; c++) {
                    m.addToEntry(r, c, stiffness * row[r] * row[c]);
                }
            }
        }
    }

    private void addBelts(RealMatrix m) {
        BeltArrays b = k.belts;
        double y = k.yb + k.oby;
        m.addToEntry(2, 2, Math.max(0, b.pretensionStiffness));
        for (int i = 0; i < b.count; i++) {
            if (k.tension[i] <= 0) {
                continue;
            }
            int at = 6 * i;
            double g3 = b.row[at + 3];
            double g4 = b.row[at + 4];
            double[] row = new double[size];
            row[0] = b.row[at] + g3;
            row[1] = b.row[at + 1] + g4;
            row[2] =
                    b.row[at + 2]
                            + b.row[at + 5]
                            + g3 * (k.ocy - k.oby)
                            + g4 * (k.obx - k.ocx + k.carriagePlace);
            row[3] = g3 + g4 * k.th;
            row[4] = g4;
            row[5] = b.row[at + 5] + g3 * k.ocy - g4 * k.ocx;
            put(row, b.startAxle[i], b.startArm[i]);
            put(row, b.endAxle[i], b.endArm[i]);
            double length = b.length0[i] + b.lengthX[i] * k.carriagePlace + b.lengthY[i] * y;
            add(m, b.ea[i] / length, row);
        }
    }

    private void addLegs(RealMatrix m) {
        GuideArrays g = k.guide;
        for (int j = 0; j < g.lateralCount; j++) {
            double lever = k.oby + g.along[j];
            double x = k.xb + k.obx - lever * k.th + g.along[j] * k.squareness;
            if (Math.abs(x) > g.lateralPlay[j] || g.lateralPlay[j] == 0) {
                double[] row = new double[size];
                row[0] = 1;
                row[2] = -lever;
                add(m, g.lateralStiffness[j], row);
            }
        }
        double yaw = k.th - k.squareness;
        for (int j = 0; j < g.yawCount; j++) {
            if (Math.abs(yaw) > g.yawPlay[j] || g.yawPlay[j] == 0) {
                m.addToEntry(2, 2, g.yawStiffness[j]);
            }
        }
    }

    private void addCarriage(RealMatrix m) {
        double a = k.halfSpan + k.carriagePlace;
        double b = k.halfSpan - k.carriagePlace;
        double c11 = k.lateralCompliance + k.beamFlexibility * a * a * b * b;
        double c12 = k.beamFlexibility * a * b * (b - a);
        double c22 = k.yawCompliance + k.beamFlexibility * (a * a - a * b + b * b) * 2 * k.halfSpan;
        double det = c11 * c22 - c12 * c12;
        double s = k.carriagePlace;
        double c = k.yc + k.ocy + k.ocx * k.tc - k.yb - k.oby - k.obx * k.th - s * k.th;
        double free = k.carriageLateralPlay;
        double freeYaw = k.carriageYawPlay;
        boolean across = free == 0 || Math.abs(c) > free;
        boolean twist = freeYaw == 0 || Math.abs(k.tc - k.th) > freeYaw;
        if (across) {
            m.addToEntry(4, 4, c22 / det);
        }
        if (twist) {
            m.addToEntry(5, 5, c11 / det);
        }
        if (across && twist) {
            m.addToEntry(4, 5, -c12 / det);
            m.addToEntry(5, 4, -c12 / det);
        }
    }

    private void addMotors(RealMatrix m) {
        for (int i = 0; i < k.axles.motors; i++) {
            int axle = k.axles.motorAxle[i];
            int body = k.axles.motorBody[i];
            double carried = body < 0 ? 0 : body == 2 ? k.th : k.tc;
            double poles = k.axles.poles[i];
            double lag = poles * (k.command[i] - (k.angle[axle] - carried));
            double slope = Math.max(LEAST_COSINE, Math.cos(lag));
            double[] row = new double[size];
            put(row, axle, 1);
            if (body >= 0) {
                row[2] -= 1;
            }
            if (body == 5) {
                row[5] -= 1;
            }
            add(m, k.axles.curve[i].at(k.commandRate[i]) * poles * slope, row);
        }
    }
}
