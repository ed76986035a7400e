// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * Every pin force of a plane scissor stack from the free-body equations of all arms and the deck:
 * 6n + 3 linear equations for n stages, solved dense. It shares nothing with the program's own
 * solver and is the yardstick for it.
 *
 * <p>Frame: x to the right, y up, left foot at the origin, right foot at (L cos, 0). Arms: 2(k-1)
 * is the rising arm of stage k (bottom left to top right), 2(k-1)+1 the falling one. Friction
 * circle: a pin carrying R passes the moment mu r |R| against the relative turning of its two
 * bodies; |R| is taken along the last direction of R, which is Newton's method for a norm, until R
 * stands still.
 */
final class PlanePinSolution {
    private static final int DECK = -2;
    private static final int GROUND = -1;

    private final PlaneLift lift;
    private final int n;
    private final double c;
    private final double s;
    private final double raising;
    private final double[][] a;
    private final double[] b;
    private double[] u;

    /**
     * @param theta arm angle above the horizontal [rad]
     * @param raising +1 while rising, -1 while sinking (decides which way friction acts)
     */
    PlanePinSolution(PlaneLift lift, double theta, int raising) {
        this.lift = lift;
        this.n = lift.stages();
        this.c = lift.arm() * Math.cos(theta);
        this.s = lift.arm() * Math.sin(theta);
        this.raising = raising;
        int size = 6 * n + 3;
        a = new double[size][size];
        b = new double[size];
        u = new double[size];
        for (int pass = 0; pass < 200; pass++) {
            double[] next = solveOnce();
            double change = 0;
            double scale = 0;
            for (int i = 0; i < size; i++) {
                change = Math.max(change, Math.abs(next[i] - u[i]));
                scale = Math.max(scale, Math.abs(next[i]));
            }
            u = next;
            if (change < 1e-14 * scale) {
                return;
            }
        }
        throw new IllegalStateException("friction circles found no balance: locked");
    }

    /** Force of the falling arm on the rising arm at the centre pin of stage k = 1..n [N]. */
    double[] centre(int k) {
        return pair(2 * (k - 1));
    }

    /** Force of the upper arm on the lower arm at the left pin above stage k = 1..n-1 [N]. */
    double[] left(int k) {
        return pair(2 * n + 4 * (k - 1));
    }

    /** Force of the upper arm on the lower arm at the right pin above stage k = 1..n-1 [N]. */
    double[] right(int k) {
        return pair(2 * n + 4 * (k - 1) + 2);
    }

    /** Force of the base on the rising arm at the left foot [N]. */
    double[] leftFoot() {
        return pair(6 * n - 4);
    }

    /** Force of the foot block on the falling arm at the right foot [N]. */
    double[] rightFoot() {
        return pair(6 * n - 2);
    }

    /** Force of the deck on the falling arm at the top left [N]. */
    double[] deckPin() {
        return pair(6 * n);
    }

    /** Force of the deck block on the rising arm at the top right [N]. */
    double[] deckSlider() {
        double vertical = u[6 * n + 2];
        return new double[] {deckSliderPull(vertical), vertical};
    }

    /** Inward force the drive must put on the right foot [N]; the foot spring is taken off. */
    double footForce() {
        double[] p = rightFoot();
        double drag = lift.friction().foot() * Math.abs(p[1]);
        return -p[0] + raising * drag - lift.springs().foot();
    }

    /** Bending moment in the rising arm of stage k at its centre pin, lower half [N·m]. */
    double risingArmMoment(int k) {
        double[] f = k == 1 ? leftFoot() : negated(left(k - 1));
        double[] r = {-c / 2, -s / 2};
        return r[0] * f[1] - r[1] * f[0];
    }

    private double deckSliderPull(double vertical) {
        // The deck block follows the foot: rising moves it to the left under a fixed deck, so the
        // deck drags it to the right.
        return raising * lift.friction().deckSlider() * Math.abs(vertical);
    }

    private double[] pair(int at) {
        return new double[] {u[at], u[at + 1]};
    }

    private static double[] negated(double[] f) {
        return new double[] {-f[0], -f[1]};
    }

    private double[] solveOnce() {
        for (int i = 0; i < b.length; i++) {
            java.util.Arrays.fill(a[i], 0);
            b[i] = 0;
        }
        for (int k = 1; k <= n; k++) {
            weigh(2 * (k - 1));
            weigh(2 * (k - 1) + 1);
            pin(2 * (k - 1), 2 * (k - 1), 2 * (k - 1) + 1, c / 2, (k - 0.5) * s);
        }
        for (int k = 1; k < n; k++) {
            pin(2 * n + 4 * (k - 1), 2 * (k - 1) + 1, 2 * k, 0, k * s);
            pin(2 * n + 4 * (k - 1) + 2, 2 * (k - 1), 2 * k + 1, c, k * s);
        }
        pin(6 * n - 4, 0, GROUND, 0, 0);
        pin(6 * n - 2, 1, GROUND, c, 0);
        pin(6 * n, 2 * n - 1, DECK, 0, n * s);
        deckSliderRow();
        PlaneLift.Springs springs = lift.springs();
        load(DECK, 0, -lift.load(), lift.loadAt() * c, n * s);
        load(DECK, 0, springs.deck(), springs.deckAt() * c, n * s);
        b[2] -= springs.pin();
        return new LUDecomposition(new Array2DRowRealMatrix(a, false))
                .getSolver()
                .solve(new ArrayRealVector(b, false))
                .toArray();
    }

    private void weigh(int body) {
        load(body, 0, -lift.armWeight(), c / 2, (body / 2 + 0.5) * s);
    }

    private int row(int body) {
        return body == DECK ? 6 * n : 3 * body;
    }

    private double centreX(int body) {
        return c / 2;
    }

    private double centreY(int body) {
        return body == DECK ? n * s : (body / 2 + 0.5) * s;
    }

    private void load(int body, double fx, double fy, double x, double y) {
        int r = row(body);
        b[r] -= fx;
        b[r + 1] -= fy;
        b[r + 2] -= (x - centreX(body)) * fy - (y - centreY(body)) * fx;
    }

    /** Unknown pair {@code at} is the force of {@code other} on {@code body} at (x, y). */
    private void pin(int at, int body, int other, double x, double y) {
        push(at, body, 1, x, y);
        if (other != GROUND) {
            push(at, other, -1, x, y);
        }
        double size = Math.hypot(u[at], u[at + 1]);
        if (size == 0) {
            return;
        }
        double against = -Math.signum(turning(body) - turning(other));
        double arm = lift.friction().pin() * lift.friction().pinRadius() * against / size;
        for (int i = 0; i < 2; i++) {
            a[row(body) + 2][at + i] += arm * u[at + i];
            if (other != GROUND) {
                a[row(other) + 2][at + i] -= arm * u[at + i];
            }
        }
    }

    private void push(int at, int body, double sign, double x, double y) {
        int r = row(body);
        a[r][at] += sign;
        a[r + 1][at + 1] += sign;
        a[r + 2][at + 1] += sign * (x - centreX(body));
        a[r + 2][at] -= sign * (y - centreY(body));
    }

    /** Last unknown: the vertical force of the deck block on the rising arm of the top stage. */
    private void deckSliderRow() {
        int at = 6 * n + 2;
        int body = 2 * n - 2;
        double pull = raising * lift.friction().deckSlider() * (u[at] < 0 ? -1 : 1);
        for (int side = 0; side < 2; side++) {
            int on = side == 0 ? body : DECK;
            double sign = side == 0 ? 1 : -1;
            int r = row(on);
            a[r][at] += sign * pull;
            a[r + 1][at] += sign;
            a[r + 2][at] += sign * (c - centreX(on)) - sign * pull * (n * s - centreY(on));
        }
        double vertical = u[at];
        double size = Math.hypot(deckSliderPull(vertical), vertical);
        if (size == 0) {
            return;
        }
        double against = -Math.signum(turning(body));
        double m = lift.friction().pin() * lift.friction().pinRadius() * against * size / vertical;
        a[row(body) + 2][at] += m;
        a[row(DECK) + 2][at] -= m;
    }

    private double turning(int body) {
        if (body < 0) {
            return 0;
        }
        return body % 2 == 0 ? raising : -raising;
    }
}
