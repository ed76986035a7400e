// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Branch;
import foldwright.mechanics.joint.Rows;
import java.util.Arrays;

/** What all Newton loops do with a solution of the system. */
final class Correction {
    private Correction() {}

    /** Largest displacement [m]: of a centre, or a turn times the body's arm. */
    static double size(Assembly asm, double[] x) {
        double worst = 0;
        for (int i = 1; i < asm.bodies; i++) {
            int k = 6 * i - 6;
            double t = x[k] * x[k] + x[k + 1] * x[k + 1] + x[k + 2] * x[k + 2];
            double r = x[k + 3] * x[k + 3] + x[k + 4] * x[k + 4] + x[k + 5] * x[k + 5];
            double reach = asm.reach(i);
            double e = Math.max(t, r * reach * reach);
            if (!(e <= worst)) {
                worst = e;
            }
        }
        return Math.sqrt(worst);
    }

    /** Moves the bodies by {@code f} times the solution. */
    static void apply(State s, double[] x, double f) {
        for (int i = 1; i < s.bodies(); i++) {
            int k = 6 * i - 6;
            s.x[3 * i] += f * x[k];
            s.x[3 * i + 1] += f * x[k + 1];
            s.x[3 * i + 2] += f * x[k + 2];
            s.turn(i, s.q, 4 * i, f * x[k + 3], f * x[k + 4], f * x[k + 5]);
        }
    }

    /** The small displacements that take one pose into another, as {@link #apply} takes them. */
    static void between(State from, State to, double[] out) {
        for (int i = 1; i < from.bodies(); i++) {
            int k = 6 * i - 6;
            for (int c = 0; c < 3; c++) {
                out[k + c] = to.x[3 * i + c] - from.x[3 * i + c];
            }
            int q = 4 * i;
            double w = from.q[q];
            double x = from.q[q + 1];
            double y = from.q[q + 2];
            double z = from.q[q + 3];
            double[] t = to.q;
            out[k + 3] = 2 * (w * t[q + 1] - x * t[q] - y * t[q + 3] + z * t[q + 2]);
            out[k + 4] = 2 * (w * t[q + 2] + x * t[q + 3] - y * t[q] - z * t[q + 1]);
            out[k + 5] = 2 * (w * t[q + 3] - x * t[q + 2] + y * t[q + 1] - z * t[q]);
        }
    }

    static Failure failure(Assembly asm, double[] x, double time, double last) {
        int worst = 0;
        double most = -1;
        for (int i = 1; i < asm.bodies; i++) {
            double e = 0;
            for (int n = 0; n < 6; n++) {
                e += Math.abs(x[6 * i - 6 + n]);
            }
            if (!(e <= most)) {
                most = e;
                worst = i;
            }
        }
        Failure.Cause cause =
                Double.isNaN(last) ? Failure.Cause.NOT_A_NUMBER : Failure.Cause.NO_CONVERGENCE;
        return new Failure(
                time, cause, asm.mechanism.bodies().get(worst).name(), worstRow(asm), last);
    }

    /** Why a pose is not the one that is meant; null if it is. */
    static Failure wrongBranch(Assembly asm, State s) {
        for (Branch b : asm.mechanism.branches()) {
            if (!b.holds(s)) {
                int body = Arrays.stream(b.coordinate().bodies()).max().orElse(0);
                String name = asm.mechanism.bodies().get(body).name();
                double beyond =
                        Math.max(
                                b.least() - b.coordinate().value(s),
                                b.coordinate().value(s) - b.most());
                return new Failure(s.time, Failure.Cause.WRONG_BRANCH, name, b.name(), beyond);
            }
        }
        return null;
    }

    private static String worstRow(Assembly asm) {
        String name = "none";
        double most = -1;
        for (Rows r : asm.rows) {
            for (int i = 0; i < r.size(); i++) {
                int row = r.rowAt() + i;
                double e = Math.abs(asm.phi[row] + asm.c[row] * asm.lambda[row]);
                if (asm.engaged[row] && !(e <= most)) {
                    most = e;
                    name = r.name() + ": " + r.rowName(i);
                }
            }
        }
        return name;
    }
}
