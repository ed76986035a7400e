// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import static foldwright.gantry.route.Carrier.BASE;
import static foldwright.gantry.route.Carrier.BRIDGE;
import static foldwright.gantry.route.Carrier.CARRIAGE;
import static foldwright.gantry.route.Sense.CLOCKWISE;
import static foldwright.gantry.route.Sense.COUNTER_CLOCKWISE;

import foldwright.gantry.route.Anchor;
import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.CrossShaft;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Sense;
import foldwright.gantry.route.Travel;
import foldwright.gantry.route.Wheel;
import java.util.ArrayList;
import java.util.List;

/**
 * The layouts that the closed forms speak of: rails, belt strands and side drives at x = -w and +w,
 * front wheels at y = 0, back idlers at y = D. With {@code radius} going to zero the lengths are
 * the strand-line lengths of the closed forms.
 */
public final class GantryLayouts {
    private GantryLayouts() {}

    /**
     * Numbers shared by all layouts.
     *
     * @param w half of the span between the rails [m]
     * @param depth place of the back idlers [m]
     * @param radius of every wheel [m]
     * @param bridgeDepth distance of the back strand behind the front strand on the bridge [m]
     * @param ea force per unit strain [N]
     * @param pretension [N]
     * @param travel of the carriage
     */
    public record Size(
            double w,
            double depth,
            double radius,
            double bridgeDepth,
            double ea,
            double pretension,
            Travel travel) {

        /** The check cases' machine with wheels of a radius [m]. */
        public static Size checks(double radius) {
            return new Size(0.15, 0.36, radius, 0, 1e4, 30, new Travel(-0.1, 0.1, 0.06, 0.30));
        }

        /** The class plotter, wheels of 20 teeth. */
        public static Size plotter() {
            return new Size(
                    0.22, 0.55, 0.00636619772, 0, 1.5e4, 35, new Travel(-0.15, 0.15, 0.08, 0.48));
        }

        public Size with(Travel other) {
            return new Size(w, depth, radius, bridgeDepth, ea, pretension, other);
        }
    }

    private static Belt belt(String name, Size s, double level, List<RoutePoint> points) {
        return new Belt(name, points, 0.002, 0.006, s.ea, 0.0083, s.pretension, level);
    }

    /** One belt, both ends at the carriage, around everything. */
    public static BeltLayout singleLoop(Size s) {
        double w = s.w;
        double r = s.radius;
        double back = s.bridgeDepth;
        List<RoutePoint> points =
                List.of(
                        new Anchor("clamp left", CARRIAGE, 0, 0),
                        Wheel.idler("front left", BRIDGE, -w + r, -r, r, COUNTER_CLOCKWISE),
                        Wheel.driven("motor wheel 1", BASE, -w - r, 0, r, CLOCKWISE, "motor 1"),
                        Wheel.idler("corner left", BASE, -w - r, s.depth, r, CLOCKWISE),
                        Wheel.idler("back left", BRIDGE, -w + r, back + r, r, COUNTER_CLOCKWISE),
                        Wheel.idler("back right", BRIDGE, w - r, back + r, r, COUNTER_CLOCKWISE),
                        Wheel.idler("corner right", BASE, w + r, s.depth, r, CLOCKWISE),
                        Wheel.driven("motor wheel 2", BASE, w + r, 0, r, CLOCKWISE, "motor 2"),
                        Wheel.idler("front right", BRIDGE, w - r, -r, r, COUNTER_CLOCKWISE),
                        new Anchor("clamp right", CARRIAGE, 0, 0));
        return new BeltLayout(
                "single-loop H",
                List.of(belt("loop", s, 0, points)),
                List.of("motor 1", "motor 2"),
                List.of(),
                s.travel);
    }

    /** Two belts that cross behind the bridge, each in its own plane. */
    public static BeltLayout crossed(Size s) {
        return new BeltLayout(
                "crossed two-loop",
                List.of(
                        belt("belt 1", s, 0, crossedBelt(s, 1)),
                        belt("belt 2", s, 0.010, crossedBelt(s, -1))),
                List.of("motor 1", "motor 2"),
                List.of(),
                s.travel);
    }

    /** Belt 1 for side 1; its mirror image for side -1. */
    private static List<RoutePoint> crossedBelt(Size s, int side) {
        double w = side * s.w;
        double r = s.radius;
        double o = side * r;
        double back = s.bridgeDepth;
        Sense left = side > 0 ? COUNTER_CLOCKWISE : CLOCKWISE;
        String n = side > 0 ? " 1" : " 2";
        String axle = "motor" + n;
        return List.of(
                new Anchor("front clamp" + n, CARRIAGE, 0, 0),
                Wheel.idler("front" + n, BRIDGE, -w + o, -r, r, left),
                Wheel.driven("motor wheel" + n, BASE, -w - o, 0, r, left.opposite(), axle),
                Wheel.idler("near corner" + n, BASE, -w - o, s.depth, r, left.opposite()),
                Wheel.idler("far corner" + n, BASE, w - o, s.depth, r, left.opposite()),
                Wheel.idler("back" + n, BRIDGE, w - o, back + r, r, left.opposite()),
                new Anchor("back clamp" + n, CARRIAGE, 0, back));
    }

    /** Bridge pulled at both ends; the right side hangs on a shaft of a stiffness [N m/rad]. */
    public static BeltLayout bothEnds(Size s, double shaft) {
        return new BeltLayout(
                "pulled at both ends",
                List.of(
                        bridgeBelt(s, s.ea),
                        sideBelt(s, "left", -s.w, "motor y"),
                        sideBelt(s, "right", s.w, "shaft end")),
                List.of("motor x", "motor y"),
                List.of(new CrossShaft("motor y", "shaft end", shaft)),
                s.travel);
    }

    /** Bridge pulled at its left end only. */
    public static BeltLayout oneEnd(Size s) {
        return new BeltLayout(
                "pulled at one end",
                List.of(bridgeBelt(s, s.ea), sideBelt(s, "left", -s.w, "motor y")),
                List.of("motor x", "motor y"),
                List.of(),
                s.travel);
    }

    private static Belt bridgeBelt(Size s, double ea) {
        double w = s.w;
        double r = s.radius;
        List<RoutePoint> points =
                List.of(
                        new Anchor("clamp left", CARRIAGE, 0, 0),
                        Wheel.driven("motor wheel x", BRIDGE, -w, r, r, CLOCKWISE, "motor x"),
                        Wheel.idler("end wheel", BRIDGE, w, r, r, CLOCKWISE),
                        new Anchor("clamp right", CARRIAGE, 0, 0));
        return belt("bridge belt", s, 0.03, points).withStiffness(ea);
    }

    private static Belt sideBelt(Size s, String side, double x, String axle) {
        double r = s.radius;
        List<RoutePoint> points =
                List.of(
                        new Anchor("front clamp " + side, BRIDGE, x, 0),
                        Wheel.driven("drive wheel " + side, BASE, x - r, 0, r, CLOCKWISE, axle),
                        Wheel.idler("corner " + side, BASE, x - r, s.depth, r, CLOCKWISE),
                        new Anchor("back clamp " + side, BRIDGE, x, 0));
        return belt("side belt " + side, s, 0, points);
    }

    /** A layout of its own: belts lie still, motors ride on bridge and carriage in an omega. */
    public static BeltLayout ridingMotors(Size s) {
        double r = s.radius;
        List<RoutePoint> side = new ArrayList<>();
        side.add(new Anchor("front post", BASE, -s.w, 0));
        side.add(Wheel.idler("lower roller", BRIDGE, -s.w + r, -2.2 * r, r, CLOCKWISE));
        side.add(
                Wheel.driven("pinion y", BRIDGE, -s.w + 3 * r, 0, r, COUNTER_CLOCKWISE, "motor y"));
        side.add(Wheel.idler("upper roller", BRIDGE, -s.w + r, 2.2 * r, r, CLOCKWISE));
        side.add(new Anchor("back post", BASE, -s.w, s.depth));
        List<RoutePoint> across = new ArrayList<>();
        across.add(new Anchor("left post", BRIDGE, -s.w, 0));
        across.add(Wheel.idler("left roller", CARRIAGE, -2.2 * r, -r, r, CLOCKWISE));
        across.add(Wheel.driven("pinion x", CARRIAGE, 0, -3 * r, r, COUNTER_CLOCKWISE, "motor x"));
        across.add(Wheel.idler("right roller", CARRIAGE, 2.2 * r, -r, r, CLOCKWISE));
        across.add(new Anchor("right post", BRIDGE, s.w, 0));
        return new BeltLayout(
                "riding motors",
                List.of(belt("side belt", s, 0, side), belt("bridge belt", s, 0.02, across)),
                List.of("motor x", "motor y"),
                List.of(),
                s.travel);
    }
}
