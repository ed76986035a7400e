// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.RouteBody;
import foldwright.machine.gantry.StandsOn;
import java.util.List;
import org.joml.Matrix4x3f;

/** Places bridge, carriage, wheels and belts for a carriage position and a skew of the bridge. */
public final class GantryMotion {
    /**
     * Where the gantry is.
     *
     * @param x carriage along the bridge, gantry frame [m]
     * @param y bridge along the rails [m]
     * @param skew yaw of the bridge, counter-clockwise seen from above [rad]
     */
    public record Place(double x, double y, double skew) {}

    private final Gantry gantry;
    private final List<GantryParts.Turning> turning;
    private final List<BeltRun> runs;
    private final int frame;
    private final int carrier;
    private final int bridge;
    private final int carriage;
    private final Place home;
    private final double[] bridgeAt = new double[3];
    private final double[] carriageAt = new double[3];

    GantryMotion(Gantry gantry, GantryParts parts, Bodies bodies) {
        this.gantry = gantry;
        turning = parts.turning();
        runs = parts.runs();
        frame = bodies.of(Bodies.GANTRY);
        bridge = bodies.of(Bodies.BRIDGE);
        carriage = bodies.of(Bodies.CARRIAGE);
        carrier = bodies.of(gantry.stand().on() == StandsOn.DECK ? Bodies.DECK : Bodies.BASE);
        home = new Place(gantry.bridge().travel().middle(), gantry.legs().travel().middle(), 0);
    }

    /** Carriage and bridge in the middle of their travels, square. */
    public Place home() {
        return home;
    }

    /** The frame of the gantry in the world, as placed last. */
    public Matrix4x3f frame(Pose pose) {
        return pose.body[frame];
    }

    /** Places everything; the carrier has been placed before. */
    public void place(Place at, Pose out) {
        var origin = gantry.stand().origin();
        Matrix4x3f world =
                out.body[frame]
                        .set(out.body[carrier])
                        .translate((float) origin.x(), (float) origin.y(), (float) origin.z())
                        .rotateZ((float) gantry.stand().turn());
        out.body[bridge].set(world).translate(0, (float) at.y, 0).rotateZ((float) at.skew);
        double c = Math.cos(at.skew);
        double s = Math.sin(at.skew);
        set(bridgeAt, 0, at.y, at.skew);
        set(carriageAt, c * at.x, at.y + s * at.x, at.skew);
        out.body[carriage]
                .set(world)
                .translate((float) carriageAt[0], (float) carriageAt[1], 0)
                .rotateZ((float) at.skew);
        double run = at.x + at.y;
        for (int i = 0; i < runs.size(); i++) {
            runs.get(i).place(out, world, bridgeAt, carriageAt, run);
        }
        for (int i = 0; i < turning.size(); i++) {
            GantryParts.Turning t = turning.get(i);
            double[] on =
                    t.on() == RouteBody.BRIDGE
                            ? bridgeAt
                            : t.on() == RouteBody.CARRIAGE ? carriageAt : ZERO;
            double cc = Math.cos(on[2]);
            double ss = Math.sin(on[2]);
            out.body[t.body()]
                    .set(world)
                    .translate(
                            (float) (on[0] + cc * t.x() - ss * t.y()),
                            (float) (on[1] + ss * t.x() + cc * t.y()),
                            (float) t.z())
                    .rotateZ((float) (t.sense() * run / t.radius()));
        }
    }

    private static final double[] ZERO = {0, 0, 0};

    private static void set(double[] out, double x, double y, double turn) {
        out[0] = x;
        out[1] = y;
        out[2] = turn;
    }
}
