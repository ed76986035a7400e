// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.List;

/**
 * What is left over of forces at a place under a steady load, from the kernel's own forces; inertia
 * enters as forces against the acceleration (d'Alembert).
 *
 * <p>Two sets of coordinates, in one order, then the angles of the free axles in the order in which
 * they are given [rad]:
 *
 * <ul>
 *   <li>{@code q}: where bodies stand. Bridge x across the rails [m], y along them [m], yaw [rad];
 *       carriage x [m], y [m], yaw [rad], all of centres of mass in the frame of the gantry.
 *   <li>{@code z}: the same for the bridge, but the carriage as seen on it: way along the bridge,
 *       way across it (0 where its guide wants it) and twist against it.
 * </ul>
 */
final class StaticForces {
    /** What each coordinate moves, in this order; free axles follow. */
    static final List<String> NAMES =
            List.of(
                    "bridge across the rails",
                    "bridge along the rails",
                    "bridge yaw",
                    "carriage along the bridge",
                    "carriage across the bridge",
                    "carriage yaw");

    private final GantryKernel k;
    private final int[] freeAxles;
    private final int size;
    private final double[] tether;
    private Load load = Load.NONE;

    StaticForces(GantryKernel kernel, int[] freeAxles, double[] tether) {
        k = kernel;
        this.freeAxles = freeAxles;
        this.tether = tether;
        size = NAMES.size() + freeAxles.length;
    }

    void load(Load newLoad) {
        load = newLoad;
    }

    /** Where the kernel stands, as q. */
    double[] read() {
        double[] q = new double[size];
        q[0] = k.bridge.x;
        q[1] = k.bridge.y;
        q[2] = k.bridge.yaw;
        q[3] = k.carriage.x;
        q[4] = k.carriage.y;
        q[5] = k.carriage.yaw;
        for (int i = 0; i < freeAxles.length; i++) {
            q[6 + i] = k.axles.rotors[freeAxles[i]].angle;
        }
        return q;
    }

    /** Leaves the kernel at q and gives the force along each of its coordinates [N, N m]. */
    double[] at(double[] q) {
        k.bridge.stand(q[0], q[1], q[2]);
        k.carriage.stand(q[3], q[4], q[5]);
        for (int i = 0; i < freeAxles.length; i++) {
            k.axles.rotors[freeAxles[i]].stand(q[6 + i]);
        }
        k.evaluate(0);
        double fx = load.carriageFriction();
        double fy = load.railFriction();
        BodyMass b = k.model.bridge();
        double leverX = k.model.tool().x() + k.ocx;
        double leverY = k.model.tool().y() + k.ocy;
        double[] f = new double[size];
        f[0] = k.bridge.fx + fx;
        f[1] = k.bridge.fy - k.bridge.massY * load.ay() - fy;
        f[2] = k.bridge.moment + fx * b.centreY() + fy * b.centreX();
        f[3] = k.carriage.fx - k.carriage.massX * load.ax() - fx + load.toolX();
        f[4] = k.carriage.fy - k.carriage.massY * load.ay() + load.toolY();
        f[5] = k.carriage.moment + fx * k.ocy + leverX * load.toolY() - leverY * load.toolX();
        for (int i = 0; i < freeAxles.length; i++) {
            int a = freeAxles[i];
            double speedUp =
                    k.relation.anglePerX(a) * load.ax() + k.relation.anglePerY(a) * load.ay();
            f[6 + i] = k.axles.rotors[a].torque() - k.axles.rotors[a].inertia * speedUp;
        }
        return f;
    }

    /**
     * z of a q. In z a bridge that swings within its play takes the carriage along, and the problem
     * stays convex.
     */
    double[] relative(double[] q) {
        double[] z = q.clone();
        z[3] = q[3] + k.ocx - k.ocy * q[5] - q[0] - k.obx + k.oby * q[2];
        z[4] = q[4] + k.ocy + k.ocx * q[5] - q[1] - k.oby - k.obx * q[2] - z[3] * q[2];
        z[5] = q[5] - q[2];
        return z;
    }

    /**
     * Leaves the kernel at z and gives the force along each of its coordinates, what holds guides
     * in the middle of their play counted [N, N m].
     */
    double[] inRelative(double[] z) {
        double[] q = z.clone();
        q[5] = z[2] + z[5];
        q[3] = z[3] - k.ocx + k.ocy * q[5] + z[0] + k.obx - k.oby * z[2];
        q[4] = z[4] - k.ocy - k.ocx * q[5] + z[1] + k.oby + k.obx * z[2] + z[3] * z[2];
        double[] f = at(q);
        double[] r = f.clone();
        r[0] = f[0] + f[3];
        r[1] = f[1] + f[4];
        r[2] = f[2] + f[5] + f[3] * (k.ocy - k.oby) + f[4] * (k.obx - k.ocx + z[3]);
        r[3] = f[3] + f[4] * z[2];
        r[5] = f[5] + f[3] * k.ocy - f[4] * k.ocx;
        r[0] -= tether[0] * (z[0] + k.obx);
        r[2] -= tether[2] * (z[2] - k.squareness);
        r[4] -= tether[4] * z[4];
        r[5] -= tether[5] * z[5];
        return r;
    }
}
