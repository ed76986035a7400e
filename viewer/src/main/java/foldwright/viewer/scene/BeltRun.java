// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.gantry.BeltRoute;
import foldwright.machine.gantry.RouteBody;
import foldwright.machine.gantry.RouteItem;
import foldwright.machine.gantry.Sense;
import foldwright.machine.gantry.Wheel;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import java.util.List;
import java.util.function.ToIntFunction;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/**
 * A gantry belt as pieces: a straight one for each span and some for each wrap, laid anew for each
 * pose. A piece is a unit bar stretched along x by its body's matrix; teeth follow the way along
 * the belt.
 */
final class BeltRun {
    private static final int PIECES = 8;
    private static final double THICK = 0.0015;

    private final BeltRoute route;
    private final List<RouteItem> items;
    private final int[] bodies;
    private final int[] pieces;
    private final int[] channels;
    private final double[] x;
    private final double[] y;
    private final double[] rho;

    BeltRun(BeltRoute route, PartList out, ToIntFunction<RouteBody> bodyOf) {
        this.route = route;
        items = route.route();
        int n = items.size();
        int spans = route.endless() ? n : n - 1;
        long wheels = items.stream().filter(Wheel.class::isInstance).count();
        bodies = items.stream().mapToInt(i -> bodyOf.applyAsInt(i.on())).toArray();
        x = new double[n];
        y = new double[n];
        rho = new double[n];
        double half = route.belt().width() / 2;
        Mesh mesh =
                new Solid().zone(Zone.BELT).box(0, -THICK / 2, -half, 1, THICK / 2, half).mesh();
        int count = (int) (spans + wheels * PIECES);
        pieces = new int[count];
        channels = new int[count];
        int piece = 0;
        for (int i = 0; i < n; i++) {
            if (items.get(i) instanceof Wheel) {
                for (int k = 0; k < PIECES; k++) {
                    add(piece++, BeltNames.wrap(route.name(), items.get(i).name()), mesh, out);
                }
            }
            if (i < spans) {
                String next = items.get((i + 1) % n).name();
                add(piece++, BeltNames.strand(route.name(), items.get(i).name(), next), mesh, out);
            }
        }
    }

    private void add(int piece, String name, Mesh mesh, PartList out) {
        channels[piece] = out.newChannel();
        pieces[piece] = out.bodies.of(route.name() + " piece " + piece);
        out.add(
                name,
                PartKind.BELT,
                mesh,
                pieces[piece],
                new Matrix4x3f(),
                channels[piece],
                route.belt().pitch());
    }

    /**
     * Places of all pieces in the gantry frame, then in the world; {@code run} is how far the belt
     * has moved [m].
     */
    void place(
            Pose pose, Matrix4x3f gantryToWorld, double[] bridge, double[] carriage, double run) {
        for (int i = 0; i < items.size(); i++) {
            RouteItem item = items.get(i);
            double[] at =
                    item.on() == RouteBody.BRIDGE
                            ? bridge
                            : item.on() == RouteBody.CARRIAGE ? carriage : ZERO;
            double c = Math.cos(at[2]);
            double s = Math.sin(at[2]);
            x[i] = at[0] + c * item.at().x() - s * item.at().y();
            y[i] = at[1] + s * item.at().x() + c * item.at().y();
            rho[i] =
                    item instanceof Wheel w
                            ? (w.sense() == Sense.COUNTERCLOCKWISE ? 1 : -1)
                                    * w.pitchRadius(route.belt())
                            : 0;
        }
        int n = items.size();
        int spans = route.endless() ? n : n - 1;
        int piece = 0;
        double way = -run;
        double enter = route.endless() ? heading(n - 1, 0) : 0;
        for (int i = 0; i < n; i++) {
            boolean leaves = i < spans;
            double leave = leaves ? heading(i, (i + 1) % n) : enter;
            if (items.get(i) instanceof Wheel) {
                way = wrap(pose, gantryToWorld, i, enter, leave, piece, way);
                piece += PIECES;
            }
            if (leaves) {
                int j = (i + 1) % n;
                double px = x[i] + rho[i] * Math.sin(leave);
                double py = y[i] - rho[i] * Math.cos(leave);
                double qx = x[j] + rho[j] * Math.sin(leave);
                double qy = y[j] - rho[j] * Math.cos(leave);
                double len = Math.hypot(qx - px, qy - py);
                lay(pose, gantryToWorld, piece++, px, py, leave, len, way);
                way += len;
                enter = leave;
            }
        }
    }

    private static final double[] ZERO = {0, 0, 0};

    /**
     * Direction of the straight belt between two wheels. With signed radii (positive: centre to the
     * left of the run) and unit normal m to the left, m . (c2 - c1) = rho2 - rho1.
     */
    private double heading(int i, int j) {
        double dx = x[j] - x[i];
        double dy = y[j] - y[i];
        double d = Math.hypot(dx, dy);
        double ratio = Math.max(-1, Math.min(1, (rho[j] - rho[i]) / Math.max(1e-9, d)));
        return Math.atan2(dy, dx) - Math.asin(ratio);
    }

    private double wrap(
            Pose pose, Matrix4x3f world, int i, double enter, double leave, int piece, double way) {
        double sense = Math.signum(rho[i]);
        double angle = (leave - enter) * sense;
        angle = angle - 2 * Math.PI * Math.floor((angle + 1e-9) / (2 * Math.PI));
        double r = Math.abs(rho[i]);
        double step = angle / PIECES;
        double chord = 2 * r * Math.sin(step / 2);
        double along = way;
        for (int k = 0; k < PIECES; k++) {
            double from = enter + sense * step * k;
            double px = x[i] + rho[i] * Math.sin(from);
            double py = y[i] - rho[i] * Math.cos(from);
            lay(pose, world, piece + k, px, py, from + sense * step / 2, chord, along);
            along += r * step;
        }
        return along;
    }

    private final Vector3f scale = new Vector3f();

    private void lay(
            Pose pose,
            Matrix4x3f world,
            int piece,
            double px,
            double py,
            double heading,
            double length,
            double way) {
        scale.set((float) Math.max(1e-6, length), 1, 1);
        pose.body[pieces[piece]]
                .set(world)
                .translate((float) px, (float) py, (float) route.height())
                .rotateZ((float) heading)
                .scale(scale);
        pose.channel[channels[piece]] = -way;
    }
}
