// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import java.util.Arrays;

/**
 * Difference formulas of the generalised-alpha scheme with memory of the steps before.
 *
 * <pre>
 * z = h v0 + h2 (1/2 - beta) a0 + h2 beta a1      displacement of the step
 * x1 = x0 + zx,  R1 = R0 exp(zr)
 * v1 = v0 + h (1 - gamma) a0 + h gamma a1
 * (1 - am) a1 + am a0 = (1 - af) v1' + af v0'
 * af = rho/(rho + 1), am = (2 rho - 1)/(rho + 1), gamma = 1/2 + af - am, beta = (gamma + 1/2)2/4
 * </pre>
 */
final class Scheme {
    /** How the accelerations of the next step are guessed. */
    enum Guess {
        /** Quadratic through the last three. */
        SHARP,
        /**
         * Quadratic through the last five, blind to what rings at the scheme's own root -rho: that
         * is what the remainders of a kept factor excite, and a plain quadratic magnifies it
         * eightfold.
         */
        CALM
    }

    private static final int PAST = 5;
    final double alphaF;
    final double alphaM;
    final double gamma;
    final double beta;
    private final int n;

    /** Algorithmic accelerations at start and end of the step. */
    private double[] a0;

    private double[] a1;

    /** True accelerations at the last accepted steps, the latest first. */
    private final double[][] past = new double[PAST][];

    /** Displacement of the step, 6 a body. */
    final double[] z;

    /** Weights of the past accelerations in a calm guess. */
    private final double[] calm;

    private final double[] x0;
    private final double[] q0;
    private final double[] v0;
    private double[] lambdaNow = new double[0];
    private double[] lambdaBefore = new double[0];
    private double h;
    private double lastStep;
    private int history;

    Scheme(int bodies, double rho) {
        n = 6 * bodies;
        alphaF = rho / (rho + 1);
        alphaM = (2 * rho - 1) / (rho + 1);
        gamma = 0.5 + alphaF - alphaM;
        beta = 0.25 * (gamma + 0.5) * (gamma + 0.5);
        a0 = new double[n];
        a1 = new double[n];
        Arrays.setAll(past, i -> new double[n]);
        double r = rho;
        // (x - 1)^3 (x + r)^2 = x^5 - calm[0] x^4 - calm[1] x^3 - ...
        calm =
                new double[] {
                    3 - 2 * r, -3 + 6 * r - r * r, 1 - 6 * r + 3 * r * r, 2 * r - 3 * r * r, r * r
                };
        z = new double[n];
        x0 = new double[3 * bodies];
        q0 = new double[4 * bodies];
        v0 = new double[n];
    }

    /** Starts anew from consistent accelerations. */
    void restart(State s, double[] lambda) {
        System.arraycopy(s.a, 0, a1, 0, n);
        System.arraycopy(s.a, 0, past[0], 0, n);
        lambdaNow = lambda.clone();
        lambdaBefore = lambda.clone();
        history = 1;
    }

    /** Length of the present step [s]. */
    double step() {
        return h;
    }

    /** Factor of the mass matrix: d v'/d z. */
    double massFactor() {
        return (1 - alphaM) / ((1 - alphaF) * h * h * beta);
    }

    /** d v/d z. */
    double rateFactor() {
        return gamma / (h * beta);
    }

    /** Begins a step from the accepted state {@code s}: predicts pose, velocity, multipliers. */
    void predict(State s, double step, double[] lambda, Guess guess) {
        h = step;
        System.arraycopy(s.x, 0, x0, 0, x0.length);
        System.arraycopy(s.q, 0, q0, 0, q0.length);
        System.arraycopy(s.v, 0, v0, 0, n);
        double[] t = a0;
        a0 = a1;
        a1 = t;
        boolean even = step == lastStep;
        guessAccelerations(s.a, even ? history : 1, guess);
        double f = (1 - alphaF) / (1 - alphaM);
        double g = alphaF / (1 - alphaM);
        double m = alphaM / (1 - alphaM);
        double[] now = past[0];
        for (int i = 6; i < n; i++) {
            a1[i] = f * s.a[i] + g * now[i] - m * a0[i];
            z[i] = h * (s.v[i] + h * ((0.5 - beta) * a0[i] + beta * a1[i]));
            s.v[i] += h * ((1 - gamma) * a0[i] + gamma * a1[i]);
        }
        if (even && history >= 2) {
            for (int i = 0; i < lambda.length; i++) {
                lambda[i] = 2 * lambdaNow[i] - lambdaBefore[i];
            }
        }
        place(s);
    }

    private void guessAccelerations(double[] a, int known, Guess guess) {
        double[] now = past[0];
        double[] before = past[1];
        double[] longAgo = past[2];
        if (known < 2) {
            System.arraycopy(now, 6, a, 6, n - 6);
        } else if (known == 2) {
            for (int i = 6; i < n; i++) {
                a[i] = 2 * now[i] - before[i];
            }
        } else if (known < PAST || guess == Guess.SHARP) {
            for (int i = 6; i < n; i++) {
                a[i] = 3 * (now[i] - before[i]) + longAgo[i];
            }
        } else {
            double[] p3 = past[3];
            double[] p4 = past[4];
            double c0 = calm[0];
            double c1 = calm[1];
            double c2 = calm[2];
            double c3 = calm[3];
            double c4 = calm[4];
            for (int i = 6; i < n; i++) {
                a[i] = c0 * now[i] + c1 * before[i] + c2 * longAgo[i] + c3 * p3[i] + c4 * p4[i];
            }
        }
    }

    /** Predicts anew: every body goes on at its velocity at the start of the step. */
    void coast(State s) {
        for (int i = 6; i < n; i++) {
            z[i] = h * v0[i];
            a1[i] = -(0.5 - beta) / beta * a0[i];
            s.v[i] = v0[i] + h * ((1 - gamma) * a0[i] + gamma * a1[i]);
            s.a[i] = ((1 - alphaM) * a1[i] + alphaM * a0[i] - alphaF * past[0][i]) / (1 - alphaF);
        }
        place(s);
    }

    private void place(State s) {
        for (int i = 1; i < s.bodies(); i++) {
            int k = 6 * i;
            s.x[3 * i] = x0[3 * i] + z[k];
            s.x[3 * i + 1] = x0[3 * i + 1] + z[k + 1];
            s.x[3 * i + 2] = x0[3 * i + 2] + z[k + 2];
            s.turn(i, q0, 4 * i, z[k + 3], z[k + 4], z[k + 5]);
            s.spin(i);
        }
    }

    /**
     * Corrects by {@code dz} (6 a body from body 1): z is the logarithm of exp(z) exp(dz), to
     * second order.
     */
    void correct(State s, double[] dz) {
        double ka = 1 / (h * h * beta);
        double kv = rateFactor();
        double kd = massFactor();
        for (int k = 6; k < n; k += 6) {
            int j = k - 6;
            double cx = z[k + 4] * dz[j + 5] - z[k + 5] * dz[j + 4];
            double cy = z[k + 5] * dz[j + 3] - z[k + 3] * dz[j + 5];
            double cz = z[k + 3] * dz[j + 4] - z[k + 4] * dz[j + 3];
            dz[j + 3] += 0.5 * cx;
            dz[j + 4] += 0.5 * cy;
            dz[j + 5] += 0.5 * cz;
            for (int c = 0; c < 6; c++) {
                double d = dz[j + c];
                z[k + c] += d;
                a1[k + c] += ka * d;
                s.v[k + c] += kv * d;
                s.a[k + c] += kd * d;
            }
        }
        place(s);
    }

    /** Takes over an accepted step into the memory. */
    void accepted(State s, double[] lambda) {
        boolean even = h == lastStep;
        double[] oldest = past[PAST - 1];
        System.arraycopy(past, 0, past, 1, PAST - 1);
        past[0] = oldest;
        System.arraycopy(s.a, 0, oldest, 0, n);
        double[] t = lambdaBefore;
        lambdaBefore = lambdaNow;
        lambdaNow = t;
        System.arraycopy(lambda, 0, lambdaNow, 0, lambdaNow.length);
        history = even ? Math.min(PAST, history + 1) : 2;
        lastStep = h;
    }

    /** Accelerations jumped at the end of the accepted step: goes on from those in the state. */
    void jumped(State s) {
        System.arraycopy(s.a, 0, a1, 0, n);
        System.arraycopy(s.a, 0, past[0], 0, n);
        history = 1;
    }

    /** Forgets a step that was given up. */
    void giveUp() {
        System.arraycopy(a0, 0, a1, 0, n);
    }
}
