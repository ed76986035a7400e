// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Where the gantry settles under a steady acceleration, with the kernel's own forces.
 *
 * <p>Inertia enters as forces against the acceleration (d'Alembert). Newton on what is in contact;
 * play leaves it singular, so a share of the closed guides' stiffness is added, more while steps
 * have to be cut, less while they go through; a step is cut where the work along it changes sign.
 * Friction of rails and carriage is what the load states, not the kernel's. Within play and without
 * load the bridge stays where it starts, in the middle.
 */
public final class Statics {
    /** How the motors hold. */
    public enum Hold {
        /** Rotors exactly on their commands. */
        ROTORS,
        /** Fields on their commands, rotors hang behind by their torque. */
        FIELDS
    }

    private static final int ITERATIONS = 400;

    /** Iterations that take belt rows anew where these change with the place. */
    private static final int RENEWALS = 30;

    private static final double STEP = 1e-8;
    private static final double FIRST_TRACE = 1e-4;
    private static final double LEAST_TRACE = 1e-9;

    /** Share of a guide's stiffness that holds it in the middle of its play: grease and seals. */
    static final double TETHER = 1e-4;

    private static final double DONE = 1e-14;

    private final GantryKernel kernel;
    private final Hold hold;
    private final int[] freeAxles;
    private final double[] arm;
    private final int size;
    private final ActiveTangent tangent;
    private double[] trace;
    private Load load = Load.NONE;

    public Statics(GantryModel model, Hold hold) {
        kernel = new GantryKernel(model.frictionless());
        this.hold = hold;
        int from = hold == Hold.FIELDS ? 0 : model.motors().size();
        freeAxles = new int[Math.max(0, kernel.axles.count - from)];
        for (int i = 0; i < freeAxles.length; i++) {
            freeAxles[i] = from + i;
        }
        size = 6 + freeAxles.length;
        tangent = new ActiveTangent(kernel, freeAxles);
        arm = new double[freeAxles.length];
        for (int i = 0; i < arm.length; i++) {
            arm[i] = largestArm(freeAxles[i]);
        }
    }

    /** Way of belt a radian of an axle, to turn a small way into a small angle [m/rad]. */
    private double largestArm(int axle) {
        double largest = 0;
        for (int s = 0; s < kernel.belts.count; s++) {
            if (kernel.belts.startAxle[s] == axle) {
                largest = Math.max(largest, Math.abs(kernel.belts.startArm[s]));
            }
            if (kernel.belts.endAxle[s] == axle) {
                largest = Math.max(largest, Math.abs(kernel.belts.endArm[s]));
            }
        }
        return largest > 0 ? largest : 1;
    }

    /** The kernel, standing where the last solution left it. */
    public GantryKernel kernel() {
        return kernel;
    }

    /**
     * Settles at a place under a load.
     *
     * @param x commanded place of the carriage origin [m]
     * @param y commanded place of the bridge [m]
     * @throws IllegalStateException where no balance is found; names the coordinate and what is
     *     left over
     */
    public GantryState settle(double x, double y, Load newLoad) {
        load = newLoad;
        kernel.stand(x, y);
        if (trace == null) {
            trace = closedDiagonal();
        }
        newton();
        kernel.evaluate(0);
        kernel.axc = load.ax();
        kernel.ayc = load.ay();
        return GantryState.of(kernel, x, y);
    }

    private void newton() {
        double[] q = toRelative(read());
        double[] f = relativeForce(q);
        double work = 0;
        double share = FIRST_TRACE;
        for (int i = 0; i < ITERATIONS; i++) {
            if (i < RENEWALS) {
                kernel.renewBelts();
                f = relativeForce(q);
            }
            double[] dir = direction(f, share);
            double t = lineSearch(q, dir, f);
            share = t < 0.5 ? Math.min(1, 10 * share) : Math.max(LEAST_TRACE, 0.3 * share);
            double moved = 0;
            for (int d = 0; d < size; d++) {
                q[d] += t * dir[d];
                moved = Math.max(moved, Math.abs(t * dir[d]));
            }
            f = relativeForce(q);
            work = leftOver(f);
            if ((moved < DONE && work < 1e-6) || work < 1e-11) {
                break;
            }
        }
        if (!balanced(q, f)) {
            throw stuck(f);
        }
    }

    /** Whether what is left over is no more than rounding of the places times the stiffness. */
    private boolean balanced(double[] q, double[] f) {
        double ulp = Math.ulp(Math.abs(kernel.yc) + Math.abs(kernel.xc));
        for (int d = 0; d < size; d++) {
            double rounding = d < 6 ? 64 * ulp * trace[d] : 64 * Math.ulp(q[d]) * trace[d];
            if (Math.abs(f[d]) > 1e-5 + rounding) {
                return false;
            }
        }
        return true;
    }

    /**
     * Bridge place and yaw, then the carriage on the bridge: along s, across c, twist. In these, a
     * bridge that swings within its play takes the carriage along, and the problem stays convex.
     */
    private double[] toRelative(double[] q) {
        GantryKernel k = kernel;
        double[] z = q.clone();
        z[3] = q[3] + k.ocx - k.ocy * q[5] - q[0] - k.obx + k.oby * q[2];
        z[4] = q[4] + k.ocy + k.ocx * q[5] - q[1] - k.oby - k.obx * q[2] - z[3] * q[2];
        z[5] = q[5] - q[2];
        return z;
    }

    private double[] relativeForce(double[] z) {
        GantryKernel k = kernel;
        double[] q = z.clone();
        q[5] = z[2] + z[5];
        q[3] = z[3] - k.ocx + k.ocy * q[5] + z[0] + k.obx - k.oby * z[2];
        q[4] = z[4] - k.ocy - k.ocx * q[5] + z[1] + k.oby + k.obx * z[2] + z[3] * z[2];
        double[] f = force(q);
        double[] r = f.clone();
        r[0] = f[0] + f[3];
        r[1] = f[1] + f[4];
        r[2] = f[2] + f[5] + f[3] * (k.ocy - k.oby) + f[4] * (k.obx - k.ocx + z[3]);
        r[3] = f[3] + f[4] * z[2];
        r[5] = f[5] + f[3] * k.ocy - f[4] * k.ocx;
        double[] tether = tangent.tether();
        r[0] -= tether[0] * (z[0] + k.obx);
        r[2] -= tether[2] * (z[2] - k.squareness);
        r[4] -= tether[4] * z[4];
        r[5] -= tether[5] * z[5];
        return r;
    }

    /** Newton direction; rows and columns are scaled to a unit diagonal of the closed guides. */
    private double[] direction(double[] f, double share) {
        RealMatrix k = tangent.at();
        RealVector right = new ArrayRealVector(size);
        for (int r = 0; r < size; r++) {
            double scaleR = 1 / Math.sqrt(trace[r]);
            right.setEntry(r, f[r] * scaleR);
            for (int c = 0; c < size; c++) {
                k.multiplyEntry(r, c, scaleR / Math.sqrt(trace[c]));
            }
            k.addToEntry(r, r, share);
        }
        double[] dir = new LUDecomposition(k).getSolver().solve(right).toArray();
        for (int r = 0; r < size; r++) {
            dir[r] /= Math.sqrt(trace[r]);
        }
        return dir;
    }

    private double leftOver(double[] f) {
        return Arrays.stream(f).map(Math::abs).max().orElse(0);
    }

    private IllegalStateException stuck(double[] f) {
        int worst = 0;
        for (int d = 1; d < size; d++) {
            worst = Math.abs(f[d]) > Math.abs(f[worst]) ? d : worst;
        }
        String[] names = {
            "bridge across the rails",
            "bridge along the rails",
            "bridge yaw",
            "carriage along the bridge",
            "carriage across the bridge",
            "carriage yaw"
        };
        String name =
                worst < 6 ? names[worst] : kernel.system.axleNames().get(freeAxles[worst - 6]);
        return new IllegalStateException(
                String.format(
                        Locale.ROOT,
                        "no balance at %s: %.3g N or N m left over after %d steps; a motor may"
                                + " be too weak to hold this load",
                        name,
                        f[worst],
                        ITERATIONS));
    }

    /** Share of the step at which the work along it vanishes, at most 1. */
    private double lineSearch(double[] q, double[] dir, double[] f) {
        double start = dot(dir, f);
        if (along(q, dir, 1) >= -1e-3 * Math.abs(start)) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 80; i++) {
            double mid = 0.5 * (low + high);
            if (along(q, dir, mid) > 0) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return high;
    }

    private double along(double[] q, double[] dir, double t) {
        double[] at = q.clone();
        for (int d = 0; d < size; d++) {
            at[d] += t * dir[d];
        }
        return dot(dir, relativeForce(at));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private double[] closedDiagonal() {
        double[] diagonal = new double[size];
        kernel.evaluate(0);
        RealMatrix k = tangent.at();
        BridgeGuide guide = kernel.model.bridgeGuide();
        double lateral = guide.blocks().stream().mapToDouble(GuideBlock::lateralStiffness).sum();
        double[] closed = {
            lateral,
            1e3,
            guide.yawStiffness(),
            1e3,
            1e3,
            kernel.model.carriageGuide().yawStiffness()
        };
        for (int d = 0; d < size; d++) {
            diagonal[d] = Math.max(k.getEntry(d, d), d < 6 ? closed[d] : Double.MIN_NORMAL);
        }
        return diagonal;
    }

    private double[] read() {
        double[] q = new double[size];
        q[0] = kernel.xb;
        q[1] = kernel.yb;
        q[2] = kernel.th;
        q[3] = kernel.xc;
        q[4] = kernel.yc;
        q[5] = kernel.tc;
        for (int i = 0; i < freeAxles.length; i++) {
            q[6 + i] = kernel.angle[freeAxles[i]];
        }
        return q;
    }

    private double[] force(double[] q) {
        GantryKernel k = kernel;
        k.xb = q[0];
        k.yb = q[1];
        k.th = q[2];
        k.xc = q[3];
        k.yc = q[4];
        k.tc = q[5];
        for (int i = 0; i < freeAxles.length; i++) {
            k.angle[freeAxles[i]] = q[6 + i];
        }
        k.evaluate(0);
        double fx = load.carriageFriction();
        double fy = load.railFriction();
        BodyMass b = k.model.bridge();
        BodyMass c = k.model.carriage();
        double leverX = k.model.tool().x() - c.centreX();
        double leverY = k.model.tool().y() - c.centreY();
        double[] f = new double[size];
        f[0] = k.fxb + fx;
        f[1] = k.fyb - k.massYb * load.ay() - fy;
        f[2] = k.fth + fx * b.centreY() + fy * b.centreX();
        f[3] = k.fxc - k.massXc * load.ax() - fx + load.toolX();
        f[4] = k.fyc - k.massYc * load.ay() + load.toolY();
        f[5] = k.ftc - fx * c.centreY() + leverX * load.toolY() - leverY * load.toolX();
        for (int i = 0; i < freeAxles.length; i++) {
            int a = freeAxles[i];
            double speedUp =
                    k.relation.anglePerX(a) * load.ax() + k.relation.anglePerY(a) * load.ay();
            f[6 + i] = k.torque[a] - k.axles.inertia[a] * speedUp;
        }
        return f;
    }

    /** Minus the derivative of the forces, by central differences [N/m, N m/rad]. */
    private RealMatrix difference(double[] q) {
        RealMatrix k = new Array2DRowRealMatrix(size, size);
        for (int d = 0; d < size; d++) {
            double[] up = q.clone();
            double[] down = q.clone();
            double h = d < 6 ? STEP : STEP / arm[d - 6];
            up[d] += h;
            down[d] -= h;
            double[] fUp = force(up);
            double[] fDown = force(down);
            for (int r = 0; r < size; r++) {
                k.setEntry(r, d, (fDown[r] - fUp[r]) / (2 * h));
            }
        }
        force(q);
        return k;
    }

    /**
     * Stiffness about the present state over bridge x, y, yaw, carriage x, y, yaw and the free
     * axles, forces of the load included [N/m, N m/rad].
     */
    RealMatrix stiffness() {
        return difference(read());
    }

    /** Masses in the order of {@link #stiffness()} [kg, kg m2]. */
    double[] masses() {
        double[] m = new double[size];
        m[0] = kernel.massXb;
        m[1] = kernel.massYb;
        m[2] = kernel.inertiaB;
        m[3] = kernel.massXc;
        m[4] = kernel.massYc;
        m[5] = kernel.inertiaC;
        for (int i = 0; i < freeAxles.length; i++) {
            m[6 + i] = kernel.axles.inertia[freeAxles[i]];
        }
        return m;
    }

    /** Which axles are free, by index. */
    int[] freeAxles() {
        return freeAxles.clone();
    }
}
