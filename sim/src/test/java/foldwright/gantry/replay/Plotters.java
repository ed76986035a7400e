// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.AxisMotor;
import foldwright.gantry.model.BodyMass;
import foldwright.gantry.model.BridgeGuide;
import foldwright.gantry.model.CarriageGuide;
import foldwright.gantry.model.Damping;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GuideBlock;
import foldwright.gantry.model.ToolPoint;
import foldwright.gantry.model.TorqueCurve;
import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.Carrier;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Wheel;
import foldwright.motion.Course;
import foldwright.motion.IsoReader;
import foldwright.motion.MotionLimits;
import foldwright.motion.MotionLimits.AxisLimits;
import foldwright.motion.PlannedCourse;
import foldwright.motion.Planner;
import foldwright.motion.ReaderSettings;
import foldwright.motion.ToolpathException;
import foldwright.proof.GantryLayouts;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A plotter with 440 mm between its rails, in builds that differ in one thing; and its paths. */
public final class Plotters {
    private static final double SPAN = 0.44;

    private Plotters() {}

    /** One short block a leg: 220 N m/rad in all, 0.40 mrad of free yaw to each side. */
    public static GantryModel bad() {
        return plotter(GantryLayouts.singleLoop(GantryLayouts.Size.plotter()), 220, 0.4e-3);
    }

    /** The same with both corner wheels 2 mm further in: strands along the rails run oblique. */
    public static GantryModel oblique() {
        GantryModel straight = bad();
        Belt loop = straight.layout().belts().get(0);
        List<RoutePoint> points = new ArrayList<>();
        for (RoutePoint p : loop.points()) {
            boolean corner = p.name().startsWith("corner");
            double x = p.x() - Math.signum(p.x()) * 2e-3;
            points.add(corner ? ((Wheel) p).at(x, p.y()) : p);
        }
        return straight.with(straight.layout().withBelt(0, loop.through(points)));
    }

    /** Two preloaded blocks a leg: 7200 N m/rad, no free yaw. */
    public static GantryModel cured() {
        return plotter(GantryLayouts.singleLoop(GantryLayouts.Size.plotter()), 7200, 0);
    }

    /** Two crossed belts on the bad guide. */
    public static GantryModel crossed() {
        return plotter(GantryLayouts.crossed(GantryLayouts.Size.plotter()), 220, 0.4e-3);
    }

    /** Without play and friction. */
    public static GantryModel smooth(GantryModel model) {
        return model.closed().frictionless();
    }

    public static GantryModel states(GantryModel model) {
        return model.with(IdlerModel.STATES);
    }

    private static GantryModel plotter(BeltLayout layout, double yaw, double freeYaw) {
        List<GuideBlock> blocks =
                List.of(
                        new GuideBlock(GuideBlock.Rail.LEFT, 0, 8e6, 1e-6, yaw / 2, freeYaw),
                        new GuideBlock(GuideBlock.Rail.RIGHT, 0, 0, 0, yaw / 2, freeYaw));
        List<AxisMotor> motors =
                layout.drivenAxles().stream()
                        .map(
                                axle ->
                                        new AxisMotor(
                                                axle,
                                                Carrier.BASE,
                                                TorqueCurve.of(v -> 0.33 - 1e-3 * v, 100),
                                                50,
                                                5.7e-6,
                                                0,
                                                0.002,
                                                5e-4))
                        .toList();
        return new GantryModel(
                bearings(layout),
                IdlerModel.LUMPED,
                new BodyMass(0.38, 0.38 * SPAN * SPAN / 12, 0, 0, 0),
                new BodyMass(0.42, 0.42 * 0.02 * 0.02, 0, 0.03, 0),
                new ToolPoint(0, 0.045, -0.024),
                new BridgeGuide(SPAN / 2, blocks, 1.5, 1.5, 0, 0),
                new CarriageGuide(2, 0.03, 1.6e7, 1e-6, 3600, 0.05e-3, 1.0, 0),
                600,
                motors,
                Damping.USUAL);
    }

    private static BeltLayout bearings(BeltLayout layout) {
        BeltLayout heavy = layout;
        for (int b = 0; b < layout.belts().size(); b++) {
            Belt belt = layout.belts().get(b);
            List<RoutePoint> points = new ArrayList<>();
            for (RoutePoint p : belt.points()) {
                boolean idler = p instanceof Wheel w && w.axle().isEmpty();
                points.add(idler ? ((Wheel) p).withBearing(2e-7, 5e-4) : p);
            }
            heavy = heavy.withBelt(b, belt.through(points));
        }
        return heavy;
    }

    /** 0.2 m/s, 4 m/s2, corners to 0.02 mm. */
    public static MotionLimits limits(MotionLimits.Ramps ramps) {
        return MotionLimits.alongPath(
                new AxisLimits(0.2, 4, 80), ramps, new MotionLimits.Rounded(0.02e-3));
    }

    /** Glyph-like strokes, hatches and travels; same seed, same text. */
    public static byte[] sheet(int groups) {
        Random random = new Random(7);
        StringBuilder text = new StringBuilder("G21 G90 F12000\n");
        for (int g = 0; g < groups; g++) {
            double x = 20 + 250 * random.nextDouble();
            double y = 20 + 350 * random.nextDouble();
            line(text, "G0", x, y);
            for (int i = 0; i < 10; i++) {
                line(text, "G1", x + 6 * random.nextGaussian(), y + 6 * random.nextGaussian());
            }
            for (int i = 0; i < 6; i++) {
                line(text, "G1", x + (i % 2 == 0 ? 20 : -20), y + i);
            }
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void line(StringBuilder text, String code, double x, double y) {
        double heldX = Math.max(0, Math.min(300, x));
        double heldY = Math.max(0, Math.min(400, y));
        text.append(String.format(Locale.ROOT, "%s X%.3f Y%.3f%n", code, heldX, heldY));
    }

    /** The sheet as a course. */
    public static Course course(byte[] path, MotionLimits limits) throws ToolpathException {
        IsoReader reader = new IsoReader(new ByteArrayInputStream(path), ReaderSettings.standard());
        return new PlannedCourse(new Planner(reader, limits));
    }
}
