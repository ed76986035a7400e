// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;

/** Writes derivatives of scalar functions of poses with respect to body displacements. */
final class Gradient {
    private Gradient() {}

    /**
     * Six numbers of one body: {@code f * u} for a displacement of the centre [base frame] and
     * {@code f * R'm} for a turn [body axes].
     */
    static void write(
            State s, int body, double[] g, int at, double f, double[] u, int iu, double[] m) {
        g[at] = f * u[iu];
        g[at + 1] = f * u[iu + 1];
        g[at + 2] = f * u[iu + 2];
        turn(s, body, g, at + 3, f * m[0], f * m[1], f * m[2]);
    }

    /** {@code R' (mx, my, mz)}: a base-frame moment in body axes. */
    static void turn(State s, int body, double[] g, int at, double mx, double my, double mz) {
        double[] r = s.r;
        int k = 9 * body;
        g[at] = r[k] * mx + r[k + 3] * my + r[k + 6] * mz;
        g[at + 1] = r[k + 1] * mx + r[k + 4] * my + r[k + 7] * mz;
        g[at + 2] = r[k + 2] * mx + r[k + 5] * my + r[k + 8] * mz;
    }
}
