// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.gantry.model.AxisMotor;
import foldwright.gantry.model.BodyMass;
import foldwright.gantry.model.BridgeGuide;
import foldwright.gantry.model.CarriageGuide;
import foldwright.gantry.model.Damping;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GuideBlock;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.ToolPoint;
import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Travel;
import foldwright.gantry.route.Wheel;
import java.util.ArrayList;
import java.util.List;

/**
 * The two worked belt gantries of the closed forms: carriage in the middle under acceleration along
 * the bridge, and carriage off the middle under both, with unequal pretension.
 *
 * @param id short name
 * @param x place of the carriage along the bridge [m]
 * @param y place of the bridge [m]
 * @param pretension1 of belt 1 and of the single loop [N]
 * @param pretension2 of belt 2 [N]
 * @param load acceleration and friction
 */
public record GantryCases(
        String id, double x, double y, double pretension1, double pretension2, Load load) {
    public static final double W = 0.15;
    public static final double DEPTH = 0.36;
    public static final double CARRIAGE = 0.35;
    public static final double BRIDGE = 0.45;
    public static final double BRIDGE_INERTIA = 0.0045;
    public static final double CENTRE = 0.03;
    public static final double TOOL = 0.045;
    public static final double EA = 1e4;
    public static final double GUIDE = 7200;
    public static final double RADIUS = 0.00636619772;

    /** Radius that stands for a point where strand-line lengths are wanted [m]. */
    public static final double POINT = 1e-9;

    public static final GantryCases S1 =
            new GantryCases("S1", 0, 0.18, 30, 30, new Load(3, 0, 1.5, 3, 0, 0));
    public static final GantryCases S2 =
            new GantryCases("S2", 0.09, 0.12, 32, 28, new Load(2, -4, 1.5, -3, 0, 0));

    /** Stiffness that stands for a rigid guide: below rounding noise, above every belt. */
    private static final double RIGID = 1e11;

    private static final double RIGID_YAW = 1e7;

    /** Numbers of the layouts with wheels of a radius [m]. */
    public GantryLayouts.Size size(double radius) {
        return new GantryLayouts.Size(
                W, DEPTH, radius, 0, EA, pretension1, new Travel(-0.1, 0.1, 0.06, 0.30));
    }

    /** Single-loop H layout with wheels of a radius [m]. */
    public GantryModel singleLoop(double radius) {
        return model(GantryLayouts.singleLoop(size(radius)), radius);
    }

    /** Crossed two-loop layout with wheels of a radius [m]. */
    public GantryModel crossed(double radius) {
        BeltLayout layout = GantryLayouts.crossed(size(radius));
        return model(layout.withBelt(1, layout.belts().get(1).withPretension(pretension2)), radius);
    }

    /**
     * Side drives; belts so stiff or soft that a strand pair gives the stiffness asked for here.
     *
     * @param acrossStiffness of the bridge belt at this place [N/m]
     * @param sideStiffness of a side belt at this place [N/m]
     * @param shaft between the sides [N m/rad]; 0 for a drive on the left only
     */
    public GantryModel sideDriven(
            double radius, double acrossStiffness, double sideStiffness, double shaft) {
        BeltLayout layout =
                shaft == 0
                        ? GantryLayouts.oneEnd(size(radius))
                        : GantryLayouts.bothEnds(size(radius), shaft);
        double across = x + W;
        double acrossBack = 4 * W - across;
        double front = y;
        double back = 2 * DEPTH - y;
        double ea = acrossStiffness / (1 / across + 1 / acrossBack);
        layout = layout.withBelt(0, layout.belts().get(0).withStiffness(ea));
        double side = sideStiffness / (1 / front + 1 / back);
        for (int b = 1; b < layout.belts().size(); b++) {
            layout = layout.withBelt(b, massless(layout.belts().get(b).withStiffness(side)));
        }
        return model(layout, radius);
    }

    /** The closed forms know no inertia of wheels: one that does not count, yet is stated. */
    private static Belt massless(Belt belt) {
        List<RoutePoint> points = new ArrayList<>();
        for (RoutePoint p : belt.points()) {
            boolean driven = p instanceof Wheel w && w.axle().isPresent();
            points.add(driven ? ((Wheel) p).withBearing(1e-30, 0) : p);
        }
        return belt.through(points);
    }

    /** The closed forms know belts that weigh nothing. */
    private static GantryModel model(BeltLayout layout, double radius) {
        double scale = radius / RADIUS;
        List<AxisMotor> motors =
                layout.drivenAxles().stream()
                        .map(
                                axle ->
                                        AxisMotor.plain(
                                                axle, 0.26 * scale * scale, 5.7e-6 * scale * scale))
                        .toList();
        return new GantryModel(
                layout.withBelts(belt -> belt.withLinearMass(0)),
                IdlerModel.LUMPED,
                new BodyMass(BRIDGE, BRIDGE_INERTIA, 0, 0, 0),
                new BodyMass(CARRIAGE, 1e-7, 0, CENTRE, 0),
                new ToolPoint(0, TOOL, 0),
                guide(GUIDE),
                new CarriageGuide(2, 0.05, RIGID, 0, RIGID_YAW, 0, 0, 0),
                Double.POSITIVE_INFINITY,
                motors,
                Damping.NONE);
    }

    /** Leg rails that are rigid sideways and give a yaw stiffness [N m/rad]. */
    public static BridgeGuide guide(double yawStiffness) {
        double half = yawStiffness / 2;
        return new BridgeGuide(
                W,
                List.of(
                        new GuideBlock(GuideBlock.Rail.LEFT, 0, RIGID / 2, 0, half, 0),
                        new GuideBlock(GuideBlock.Rail.RIGHT, 0, RIGID / 2, 0, half, 0)),
                0,
                0,
                0,
                0);
    }
}
