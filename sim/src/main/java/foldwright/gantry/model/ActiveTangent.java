// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Carrier;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Stiffness of what is in contact and taut at a kernel's state, over bridge x, y, yaw, carriage
 * along, across, twist, and chosen axles. Assembled, not differenced, because a difference smears a
 * contact that is pressed by less than its step. Symmetric and never negative.
 */
final class ActiveTangent {
    /** A field past its steepest still counts with this share, to keep Newton going downhill. */
    private static final double LEAST_COSINE = 0.05;

    private final GantryKernel k;
    private final Map<Rotor, Integer> column = new IdentityHashMap<>();
    private final int size;
    private final double[] tether;

    ActiveTangent(GantryKernel kernel, int[] freeAxles) {
        k = kernel;
        size = 6 + freeAxles.length;
        for (int i = 0; i < freeAxles.length; i++) {
            column.put(k.axles.rotors[freeAxles[i]], 6 + i);
        }
        tether = springs();
    }

    /** Springs that hold the middle of play, by coordinate [N/m, N m/rad]. */
    double[] tether() {
        return tether;
    }

    private double[] springs() {
        double[] t = new double[6];
        for (LateralSpring j : k.guide.lateral) {
            t[0] += j.play > 0 ? Statics.TETHER * j.stiffness : 0;
        }
        for (YawSpring j : k.guide.yaw) {
            t[2] += j.play > 0 ? Statics.TETHER * j.stiffness : 0;
        }
        BridgeGuide guide = k.model.bridgeGuide();
        if (t[2] == 0 && guide.freeYaw() > 0) {
            t[2] = Statics.TETHER * guide.yawStiffness();
        }
        t[4] = k.rail.lateralPlay() > 0 ? Statics.TETHER / k.rail.lateralCompliance() : 0;
        t[5] = k.rail.yawPlay() > 0 ? Statics.TETHER / k.rail.yawCompliance() : 0;
        return t;
    }

    /** Its rows. */
    double[][] at() {
        double[][] m = new double[size][size];
        for (int d = 0; d < 6; d++) {
            m[d][d] += tether[d];
        }
        addBelts(m);
        addLegs(m);
        addCarriage(m);
        addMotors(m);
        for (ShaftSpring s : k.axles.shafts) {
            double[] row = new double[size];
            put(row, s.first, 1);
            put(row, s.second, -1);
            add(m, s.stiffness, row);
        }
        return m;
    }

    private void put(double[] row, Rotor rotor, double value) {
        int at = column.getOrDefault(rotor, -1);
        if (at >= 0) {
            row[at] += value;
        }
    }

    private void add(double[][] m, double stiffness, double[] row) {
        for (int r = 0; r < size; r++) {
            if (row[r] != 0) {
                for (int c = 0; c < size; c++) {
                    m[r][c] += stiffness * (row[r] * row[c]);
                }
            }
        }
    }

    private void addBelts(double[][] m) {
        double place = k.carriagePlace();
        m[2][2] += Math.max(0, k.belts.pretensionStiffness);
        for (BeltSpring s = k.belts.firstAlone; s != null; s = s.next) {
            addBelt(m, s, place);
        }
        for (BeltSpring s = k.belts.firstCentred; s != null; s = s.next) {
            addBelt(m, s, place);
        }
        addPairs(m, k.belts.firstPair, place);
        addPairs(m, k.belts.firstCouple, place);
    }

    private void addPairs(double[][] m, MirrorPair first, double place) {
        for (MirrorPair pair = first; pair != null; pair = pair.next) {
            // Both together first: a sum of two does not depend on their order.
            double[][] both = new double[size][size];
            addBelt(both, pair.right, place);
            addBelt(both, pair.left, place);
            for (int r = 0; r < size; r++) {
                for (int c = 0; c < size; c++) {
                    m[r][c] += both[r][c];
                }
            }
        }
    }

    private void addBelt(double[][] m, BeltSpring s, double place) {
        if (s.tension > 0) {
            double[] row = new double[size];
            row[0] = s.g0 + s.g3;
            row[1] = s.g1 + s.g4;
            row[2] = s.g2 + s.g5 + s.g3 * (k.ocy - k.oby) + s.g4 * (k.obx - k.ocx + place);
            row[3] = s.g3 + s.g4 * k.bridge.yaw;
            row[4] = s.g4;
            row[5] = s.g5 + s.g3 * k.ocy - s.g4 * k.ocx;
            put(row, s.start, s.startArm);
            put(row, s.end, s.endArm);
            add(m, s.ea / s.length(place, k.bridge.y + k.oby), row);
        }
    }

    private void addLegs(double[][] m) {
        for (LateralSpring j : k.guide.lateral) {
            if (Math.abs(j.way(k.bridge.x, k.bridge.yaw)) > j.play || j.play == 0) {
                double[] row = new double[size];
                row[0] = 1;
                row[2] = -j.lever();
                add(m, j.stiffness, row);
            }
        }
        double yaw = k.bridge.yaw - k.squareness;
        for (YawSpring j : k.guide.yaw) {
            if (Math.abs(yaw) > j.play || j.play == 0) {
                m[2][2] += j.stiffness;
            }
        }
    }

    private void addCarriage(double[][] m) {
        double c = k.rail.liftOff(k.bridge, k.carriage);
        double free = k.rail.lateralPlay();
        double freeYaw = k.rail.yawPlay();
        boolean across = free == 0 || Math.abs(c) > free;
        boolean twist = freeYaw == 0 || Math.abs(k.carriage.yaw - k.bridge.yaw) > freeYaw;
        double[] one = k.rail.resistance(1, 0);
        double[] other = k.rail.resistance(0, 1);
        if (across) {
            m[4][4] += one[0];
        }
        if (twist) {
            m[5][5] += other[1];
        }
        if (across && twist) {
            m[4][5] += other[0];
            m[5][4] += one[1];
        }
    }

    private void addMotors(double[][] m) {
        for (FieldMotor motor : k.axles.motors) {
            double[] row = new double[size];
            put(row, motor.rotor, 1);
            if (motor.body != Carrier.BASE) {
                row[2] -= 1;
            }
            if (motor.body == Carrier.CARRIAGE) {
                row[5] -= 1;
            }
            add(m, motor.slope(k.lag(motor), LEAST_COSINE), row);
        }
    }
}
