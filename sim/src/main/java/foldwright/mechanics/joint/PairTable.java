// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;
import java.util.List;

/**
 * The pair joints of a mechanism as flat numbers, evaluated in one pass through memory: in a long
 * chain the time goes into fetching joints, not into their arithmetic.
 *
 * <p>Rows and gradients are those that {@link PairJoint} describes. A gradient of a turn is a cross
 * product in axes of the body that turns, so each body's vectors are seen from the other first.
 */
public final class PairTable {
    /** Numbers a joint: arm and axes of the marker on A, then on B, in axes of their bodies. */
    private static final int STRIDE = 24;

    private static final int ARM_B = 12;

    /** Axis of A and of B (offset into the axes) and sign of each turn row. */
    static final int[] TURN_A = {3, 0, 3};

    static final int[] TURN_B = {6, 6, 0};
    static final double[] TURN_SIGN = {-1, 1, 1};

    private static final int TRAVELS = 7;
    private static final int TURNS = 56;

    private final double[] markers;
    private final int[] bodyA;
    private final int[] bodyB;

    /** Bit f stands for the f-th {@link Freedom}. */
    private final int[] locked;

    private final int[] rowAt;
    private final int[] toA;
    private final int[] toB;

    /** Of the joint at hand: axes of A seen from the base and from B, axes of B seen from A. */
    private final double[] base = new double[9];

    private final double[] fromB = new double[9];
    private final double[] fromA = new double[9];

    /** From A's centre to B's point [m, axes of body A]; from A's point to B's [m, base frame]. */
    private final double[] arm = new double[3];

    private final double[] offset = new double[3];

    /**
     * @param joints in the order of evaluation
     * @param places of the Jacobians: body A of the first joint, its body B, A of the second, ...
     */
    public PairTable(List<PairJoint> joints, int[] places) {
        int n = joints.size();
        markers = new double[STRIDE * n];
        bodyA = new int[n];
        bodyB = new int[n];
        locked = new int[n];
        rowAt = new int[n];
        toA = new int[n];
        toB = new int[n];
        for (int j = 0; j < n; j++) {
            PairJoint joint = joints.get(j);
            joint.frameA().copy(markers, STRIDE * j);
            joint.frameB().copy(markers, STRIDE * j + ARM_B);
            bodyA[j] = joint.body(0);
            bodyB[j] = joint.body(1);
            for (Freedom f : Freedom.values()) {
                locked[j] |= joint.row(f) >= 0 ? 1 << f.ordinal() : 0;
            }
            rowAt[j] = joint.rowAt();
            toA[j] = places[2 * j];
            toB[j] = places[2 * j + 1];
        }
    }

    /** Writes phi and the Jacobians of all joints to their places, counted from {@code origin}. */
    public void evaluate(State s, double[] phi, double[] g, int origin) {
        for (int j = 0; j < locked.length; j++) {
            evaluate(j, s, phi, g, origin);
        }
    }

    /** The same, and adds G' lambda to the loads (6 a body) while G is at hand. */
    public void evaluateAndReact(
            State s, double[] phi, double[] g, double[] lambda, double[] load) {
        for (int j = 0; j < locked.length; j++) {
            evaluate(j, s, phi, g, 0);
            int size = Integer.bitCount(locked[j]);
            Reaction.add(size, lambda, rowAt[j], g, toA[j], load, 6 * bodyA[j]);
            Reaction.add(size, lambda, rowAt[j], g, toB[j], load, 6 * bodyB[j]);
        }
    }

    private void evaluate(int j, State s, double[] phi, double[] g, int origin) {
        int m = STRIDE * j;
        place(s.x, s.r, m, bodyA[j], bodyB[j]);
        int mask = locked[j];
        int a = origin + toA[j];
        int b = origin + toB[j];
        int row = rowAt[j];
        if ((mask & TRAVELS) != 0) {
            travels(mask, m, phi, row, g, a, b);
        }
        if ((mask & TURNS) != 0) {
            see(s.r, m, bodyA[j], bodyB[j]);
            int done = Integer.bitCount(mask & TRAVELS);
            turns(mask, m, phi, row + done, g, a + 6 * done, b + 6 * done);
        }
    }

    /** Axes of A from the base and from B; the arm and the offset. */
    private void place(double[] x, double[] r, int m, int a, int b) {
        double[] k = markers;
        int p = 9 * a;
        int q = 9 * b;
        for (int i = 0; i < 9; i += 3) {
            double ex = k[m + 3 + i];
            double ey = k[m + 4 + i];
            double ez = k[m + 5 + i];
            double ux = r[p] * ex + r[p + 1] * ey + r[p + 2] * ez;
            double uy = r[p + 3] * ex + r[p + 4] * ey + r[p + 5] * ez;
            double uz = r[p + 6] * ex + r[p + 7] * ey + r[p + 8] * ez;
            base[i] = ux;
            base[i + 1] = uy;
            base[i + 2] = uz;
            fromB[i] = r[q] * ux + r[q + 3] * uy + r[q + 6] * uz;
            fromB[i + 1] = r[q + 1] * ux + r[q + 4] * uy + r[q + 7] * uz;
            fromB[i + 2] = r[q + 2] * ux + r[q + 5] * uy + r[q + 8] * uz;
        }
        double sx = k[m];
        double sy = k[m + 1];
        double sz = k[m + 2];
        double tx = k[m + ARM_B];
        double ty = k[m + ARM_B + 1];
        double tz = k[m + ARM_B + 2];
        // from A's centre to B's point, in the base frame
        double lx = x[3 * b] - x[3 * a] + r[q] * tx + r[q + 1] * ty + r[q + 2] * tz;
        double ly = x[3 * b + 1] - x[3 * a + 1] + r[q + 3] * tx + r[q + 4] * ty + r[q + 5] * tz;
        double lz = x[3 * b + 2] - x[3 * a + 2] + r[q + 6] * tx + r[q + 7] * ty + r[q + 8] * tz;
        arm[0] = r[p] * lx + r[p + 3] * ly + r[p + 6] * lz;
        arm[1] = r[p + 1] * lx + r[p + 4] * ly + r[p + 7] * lz;
        arm[2] = r[p + 2] * lx + r[p + 5] * ly + r[p + 8] * lz;
        offset[0] = lx - (r[p] * sx + r[p + 1] * sy + r[p + 2] * sz);
        offset[1] = ly - (r[p + 3] * sx + r[p + 4] * sy + r[p + 5] * sz);
        offset[2] = lz - (r[p + 6] * sx + r[p + 7] * sy + r[p + 8] * sz);
    }

    /** Travel rows u . (pB - pA): gradient on B (u, sB x u), on A -(u, arm x u). */
    private void travels(int mask, int m, double[] phi, int firstRow, double[] g, int a, int b) {
        double[] k = markers;
        double sx = k[m + ARM_B];
        double sy = k[m + ARM_B + 1];
        double sz = k[m + ARM_B + 2];
        int row = firstRow;
        int p = a;
        int q = b;
        for (int f = 0; f < 3; f++) {
            if ((mask & 1 << f) == 0) {
                continue;
            }
            int i = 3 * f;
            double ux = base[i];
            double uy = base[i + 1];
            double uz = base[i + 2];
            double ex = k[m + 3 + i];
            double ey = k[m + 4 + i];
            double ez = k[m + 5 + i];
            g[p] = -ux;
            g[p + 1] = -uy;
            g[p + 2] = -uz;
            g[p + 3] = arm[2] * ey - arm[1] * ez;
            g[p + 4] = arm[0] * ez - arm[2] * ex;
            g[p + 5] = arm[1] * ex - arm[0] * ey;
            double wx = fromB[i];
            double wy = fromB[i + 1];
            double wz = fromB[i + 2];
            g[q] = ux;
            g[q + 1] = uy;
            g[q + 2] = uz;
            g[q + 3] = sy * wz - sz * wy;
            g[q + 4] = sz * wx - sx * wz;
            g[q + 5] = sx * wy - sy * wx;
            phi[row++] = ux * offset[0] + uy * offset[1] + uz * offset[2];
            p += 6;
            q += 6;
        }
    }

    /** Axes x and z of B seen from A. */
    private void see(double[] r, int m, int a, int b) {
        double[] k = markers;
        int p = 9 * a;
        int q = 9 * b;
        for (int i = 0; i < 9; i += 6) {
            double ex = k[m + ARM_B + 3 + i];
            double ey = k[m + ARM_B + 4 + i];
            double ez = k[m + ARM_B + 5 + i];
            double ux = r[q] * ex + r[q + 1] * ey + r[q + 2] * ez;
            double uy = r[q + 3] * ex + r[q + 4] * ey + r[q + 5] * ez;
            double uz = r[q + 6] * ex + r[q + 7] * ey + r[q + 8] * ez;
            fromA[i] = r[p] * ux + r[p + 3] * uy + r[p + 6] * uz;
            fromA[i + 1] = r[p + 1] * ux + r[p + 4] * uy + r[p + 7] * uz;
            fromA[i + 2] = r[p + 2] * ux + r[p + 5] * uy + r[p + 8] * uz;
        }
    }

    /** Turn rows sign uA . wB: gradient sign (w x u) on B, minus that on A. */
    private void turns(int mask, int m, double[] phi, int firstRow, double[] g, int a, int b) {
        double[] k = markers;
        int row = firstRow;
        int p = a;
        int q = b;
        for (int t = 0; t < 3; t++) {
            if ((mask & 8 << t) == 0) {
                continue;
            }
            int u = TURN_A[t];
            int w = TURN_B[t];
            double sign = TURN_SIGN[t];
            double ex = sign * k[m + 3 + u];
            double ey = sign * k[m + 4 + u];
            double ez = sign * k[m + 5 + u];
            double vx = fromA[w];
            double vy = fromA[w + 1];
            double vz = fromA[w + 2];
            g[p] = g[p + 1] = g[p + 2] = 0;
            g[p + 3] = vz * ey - vy * ez;
            g[p + 4] = vx * ez - vz * ex;
            g[p + 5] = vy * ex - vx * ey;
            double ux = sign * fromB[u];
            double uy = sign * fromB[u + 1];
            double uz = sign * fromB[u + 2];
            double wx = k[m + ARM_B + 3 + w];
            double wy = k[m + ARM_B + 4 + w];
            double wz = k[m + ARM_B + 5 + w];
            g[q] = g[q + 1] = g[q + 2] = 0;
            g[q + 3] = wy * uz - wz * uy;
            g[q + 4] = wz * ux - wx * uz;
            g[q + 5] = wx * uy - wy * ux;
            phi[row++] = ex * vx + ey * vy + ez * vz;
            p += 6;
            q += 6;
        }
    }
}
