// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
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

    /** Where a search starts anew, in shares of the play: in touch with the stop. */
    private static final double BEYOND = 1.001;

    private static final double STEP = 1e-8;
    private static final double FIRST_TRACE = 1e-4;
    private static final double LEAST_TRACE = 1e-9;

    /** Share of a guide's stiffness that holds it in the middle of its play: grease and seals. */
    static final double TETHER = 1e-4;

    private static final double DONE = 1e-14;

    /**
     * What may be left over beyond rounding where Newton circles round a kink (a block between play
     * and stop): nothing beside belts drawn to newtons [N or N·m].
     */
    private static final double LEFT = 1e-4;

    private final GantryKernel kernel;
    private final Hold hold;
    private final int[] freeAxles;
    private final double[] arm;
    private final int size;
    private final ActiveTangent tangent;
    private final StaticForces forces;
    private final MirrorAxles mirror;
    private double[] trace;

    public Statics(GantryModel model, Hold hold) {
        kernel = new GantryKernel(model.frictionless());
        this.hold = hold;
        int from = hold == Hold.FIELDS ? 0 : model.motors().size();
        freeAxles = new int[Math.max(0, kernel.axles.rotors.length - from)];
        for (int i = 0; i < freeAxles.length; i++) {
            freeAxles[i] = from + i;
        }
        size = 6 + freeAxles.length;
        tangent = new ActiveTangent(kernel, freeAxles);
        forces = new StaticForces(kernel, freeAxles, tangent.tether());
        mirror = new MirrorAxles(kernel.axles.rotors, freeAxles, 6);
        arm = new double[freeAxles.length];
        for (int i = 0; i < arm.length; i++) {
            arm[i] = largestArm(freeAxles[i]);
        }
    }

    /** Way of belt a radian of an axle, to turn a small way into a small angle [m/rad]. */
    private double largestArm(int axle) {
        Rotor rotor = kernel.axles.rotors[axle];
        double largest = 0;
        for (BeltSpring s : kernel.belts.springs) {
            largest = s.start == rotor ? Math.max(largest, Math.abs(s.startArm)) : largest;
            largest = s.end == rotor ? Math.max(largest, Math.abs(s.endArm)) : largest;
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
     * @throws GantryTrouble where no balance is found; names the coordinate and what is left over
     */
    public GantryState settle(double x, double y, Load newLoad) {
        forces.load(newLoad);
        kernel.stand(x, y);
        if (trace == null) {
            trace = closedDiagonal();
        }
        newton(forces.relative(forces.read()));
        leaveUnstableMiddle();
        kernel.evaluate(0);
        kernel.carriage.ax = newLoad.ax();
        kernel.carriage.ay = newLoad.ay();
        return GantryState.of(kernel, x, y);
    }

    /**
     * Where a load makes the middle of play a place to fall from, as a ball on a hill, the balance
     * there is true and of no use: starts again from the stop that is nearer.
     */
    private void leaveUnstableMiddle() {
        double play = kernel.model.bridgeGuide().freeYaw();
        double yaw = kernel.bridge.yaw - kernel.squareness;
        if (Math.abs(yaw) < play && !stable()) {
            double[] q = forces.relative(forces.read());
            q[2] = kernel.squareness + Math.copySign(play * BEYOND, yaw);
            newton(q);
        }
    }

    /** Whether the state is one of least energy, the turning of its forces with the yaw counted. */
    private boolean stable() {
        double[][] k = tangent.at();
        k[2][3] -= kernel.rail.force();
        k[3][2] -= kernel.rail.force();
        for (int r = 0; r < size; r++) {
            for (int c = 0; c < size; c++) {
                k[r][c] *= 1 / Math.sqrt(trace[r] * trace[c]);
            }
        }
        double[] pulls = new EigenDecomposition(matrix(k)).getRealEigenvalues();
        return Arrays.stream(pulls).min().orElse(0) >= 0;
    }

    private void newton(double[] start) {
        double[] q = start.clone();
        double[] f = forces.inRelative(q);
        double work = 0;
        double share = FIRST_TRACE;
        for (int i = 0; i < ITERATIONS; i++) {
            if (i < RENEWALS) {
                kernel.renewBelts();
                f = forces.inRelative(q);
            }
            if (!Double.isFinite(leftOver(f))) {
                throw stuck(f);
            }
            double[] dir = direction(f, share);
            double t = lineSearch(q, dir, f);
            share = t < 0.5 ? Math.min(1, 10 * share) : Math.max(LEAST_TRACE, 0.3 * share);
            double moved = 0;
            for (int d = 0; d < size; d++) {
                q[d] += t * dir[d];
                moved = Math.max(moved, Math.abs(t * dir[d]));
            }
            f = forces.inRelative(q);
            work = leftOver(f);
            if ((moved < DONE && work < 1e-6) || work < (i < RENEWALS ? 1e-11 : 1e-9)) {
                break;
            }
        }
        if (!balanced(q, f)) {
            throw stuck(f);
        }
    }

    /** Whether what is left over is no more than rounding of the places times the stiffness. */
    private boolean balanced(double[] q, double[] f) {
        double ulp = Math.ulp(Math.abs(kernel.carriage.y) + Math.abs(kernel.carriage.x));
        for (int d = 0; d < size; d++) {
            double rounding = d < 6 ? 64 * ulp * trace[d] : 64 * Math.ulp(q[d]) * trace[d];
            if (Math.abs(f[d]) > LEFT + rounding) {
                return false;
            }
        }
        return true;
    }

    /** Newton direction; rows and columns are scaled to a unit diagonal of the closed guides. */
    private double[] direction(double[] f, double share) {
        double[][] k = tangent.at();
        double[] right = new double[size];
        double[] scale = new double[size];
        for (int r = 0; r < size; r++) {
            scale[r] = 1 / Math.sqrt(trace[r]);
        }
        for (int r = 0; r < size; r++) {
            right[r] = f[r] * scale[r];
            for (int c = 0; c < size; c++) {
                k[r][c] *= scale[r] * scale[c];
            }
            k[r][r] += share;
        }
        mirror.halves(k, right);
        RealVector solved =
                new LUDecomposition(matrix(k)).getSolver().solve(new ArrayRealVector(right, false));
        double[] dir = solved.toArray();
        mirror.wholes(dir);
        for (int r = 0; r < size; r++) {
            dir[r] *= scale[r];
        }
        return dir;
    }

    private static RealMatrix matrix(double[][] rows) {
        return new Array2DRowRealMatrix(rows, false);
    }

    private static double leftOver(double[] f) {
        double most = 0;
        for (double each : f) {
            most = Math.max(most, Math.abs(each));
        }
        return most;
    }

    private GantryTrouble stuck(double[] f) {
        int worst = 0;
        for (int d = 1; d < size; d++) {
            worst = Math.abs(f[d]) > Math.abs(f[worst]) ? d : worst;
        }
        int bodies = StaticForces.NAMES.size();
        String name =
                worst < bodies
                        ? StaticForces.NAMES.get(worst)
                        : kernel.system.axleNames().get(freeAxles[worst - bodies]);
        return new GantryTrouble(
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
        double start = mirror.dot(dir, f);
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
        return mirror.dot(dir, forces.inRelative(at));
    }

    private double[] closedDiagonal() {
        double[] diagonal = new double[size];
        kernel.evaluate(0);
        double[][] k = tangent.at();
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
            diagonal[d] = Math.max(k[d][d], d < 6 ? closed[d] : Double.MIN_NORMAL);
        }
        return diagonal;
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
            double[] fUp = forces.at(up);
            double[] fDown = forces.at(down);
            for (int r = 0; r < size; r++) {
                k.setEntry(r, d, (fDown[r] - fUp[r]) / (2 * h));
            }
        }
        forces.at(q);
        return k;
    }

    /**
     * Stiffness about the present state over bridge x, y, yaw, carriage x, y, yaw and the free
     * axles, forces of the load included [N/m, N m/rad].
     */
    RealMatrix stiffness() {
        return difference(forces.read());
    }

    /** Masses in the order of {@link #stiffness()} [kg, kg m2]. */
    double[] masses() {
        double[] m = new double[size];
        m[0] = kernel.bridge.massX;
        m[1] = kernel.bridge.massY;
        m[2] = kernel.bridge.inertia;
        m[3] = kernel.carriage.massX;
        m[4] = kernel.carriage.massY;
        m[5] = kernel.carriage.inertia;
        for (int i = 0; i < freeAxles.length; i++) {
            m[6 + i] = kernel.axles.rotors[freeAxles[i]].inertia;
        }
        return m;
    }

    /** Which axles are free, by index. */
    int[] freeAxles() {
        return freeAxles.clone();
    }
}
