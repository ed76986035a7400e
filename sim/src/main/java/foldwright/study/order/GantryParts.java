// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.elements.rail.RailSize;
import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.route.BeltGeometry;
import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.Pose;
import foldwright.machine.gantry.BeltRoute;
import foldwright.machine.gantry.Block;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.GantryMotor;
import foldwright.machine.gantry.Guide;
import foldwright.machine.gantry.PlainWheel;
import foldwright.machine.gantry.RouteItem;
import foldwright.machine.gantry.ToothedWheel;
import foldwright.machine.part.Stepper;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rails and blocks, belts with their wheels, motors. */
final class GantryParts {
    private final Gantry gantry;
    private final Uses uses;
    private final List<OrderLine> out = new ArrayList<>();

    GantryParts(Gantry gantry, Uses uses) {
        this.gantry = gantry;
        this.uses = uses;
    }

    List<OrderLine> lines() {
        guide("leg", 2, gantry.legs().guide());
        guide("bridge", 1, gantry.bridge().guide());
        gantry.bridge().section().ifPresent(s -> beam());
        belts();
        wheels();
        motors();
        return out;
    }

    private void add(int count, String part, String size, List<String> open) {
        out.add(new OrderLine(OrderLine.Group.GANTRY, count, part, size, Optional.empty(), open));
    }

    private void guide(String where, int rails, Guide g) {
        List<String> open = new ArrayList<>();
        if (g.length().isEmpty()) {
            open.add("length");
        }
        boolean listed =
                RailSize.catalog().all().stream()
                        .anyMatch(s -> Math.abs(s.dimensions().railWidth() - g.size()) < 1e-6);
        if (!listed) {
            open.add("a rail of this width is in no table here");
        }
        open.add("distance of end holes");
        add(
                rails,
                where + " rail",
                Sizes.length(g.size())
                        + (listed ? " miniature profile rail" : " profile rail")
                        + (g.length().isPresent()
                                ? ", " + Sizes.length(g.length().getAsDouble()) + " long"
                                : ""),
                open);
        out.add(
                new OrderLine(
                        OrderLine.Group.GANTRY,
                        rails * g.blocks(),
                        where + " block",
                        block(g),
                        uses.of("order." + where + "-block"),
                        List.of()));
    }

    private static String block(Guide g) {
        Block b = g.block();
        StringBuilder words = new StringBuilder(Sizes.length(g.size()));
        words.append(", balls over ").append(Sizes.length(b.ballLength()));
        words.append(
                switch (g.preload()) {
                    case CLEARANCE -> ", with clearance";
                    case LIGHT -> ", lightly preloaded";
                    case MEDIUM -> ", medium preload";
                });
        b.staticRating()
                .ifPresent(
                        r ->
                                words.append(", static rating ")
                                        .append(Sizes.given(Dimension.FORCE, r)));
        b.staticMoment()
                .ifPresent(
                        m ->
                                words.append(", yaw moment ")
                                        .append(Sizes.given(Dimension.TORQUE, m)));
        return words.toString();
    }

    private void beam() {
        String material = gantry.bridge().material().map(Sizes::name).orElse("material not given");
        add(
                1,
                "bridge beam",
                gantry.bridge()
                        .section()
                        .map(
                                s ->
                                        Sizes.length(s.depth())
                                                + " high, "
                                                + Sizes.length(s.width())
                                                + " wide, "
                                                + material
                                                + ", over "
                                                + Sizes.length(gantry.legs().span()))
                        .orElseThrow(),
                List.of("length with its ends"));
    }

    private void belts() {
        BeltLayout layout = GantryAssembly.layout(gantry);
        Pose middle = Pose.at(layout.travel().xMid(), layout.travel().yMid());
        Map<String, Integer> count = new LinkedHashMap<>();
        for (int b = 0; b < gantry.belts().size(); b++) {
            BeltRoute route = gantry.belts().get(b);
            BeltGeometry g = new BeltGeometry(layout.belts().get(b));
            g.place(middle);
            count.merge(belt(route, length(g)), 1, Integer::sum);
        }
        count.forEach(
                (size, n) -> {
                    boolean open = size.startsWith("open");
                    add(
                            n,
                            "toothed belt",
                            size,
                            List.of(
                                    open
                                            ? "what its clamps hold, tooth profile"
                                            : "tooth profile"));
                });
    }

    private static String belt(BeltRoute route, double length) {
        double teeth = length / route.belt().pitch();
        return (route.endless() ? "closed" : "open")
                + ", pitch "
                + Sizes.length(route.belt().pitch())
                + ", "
                + Sizes.length(route.belt().width())
                + " wide, "
                + Printed.in("mm", length, 0)
                + (route.endless() ? " round (" : " from clamp to clamp (")
                + Printed.number(teeth, 1)
                + " teeth), tension "
                + Sizes.given(Dimension.FORCE, route.pretension());
    }

    /** Free strands and arcs on the wheels, by the belt's cord [m]. */
    static double length(BeltGeometry g) {
        double sum = 0;
        for (int i = 0; i < g.spans(); i++) {
            sum += g.length(i);
        }
        for (int i = 0; i < g.points(); i++) {
            double radius = Math.abs(g.signedRadius(i));
            sum += radius == 0 ? 0 : radius * g.wrap(i);
        }
        return sum;
    }

    private void wheels() {
        Map<List<String>, Integer> count = new LinkedHashMap<>();
        for (BeltRoute route : gantry.belts()) {
            for (RouteItem item : route.route()) {
                if (item instanceof ToothedWheel w) {
                    count.merge(toothed(route, w), 1, Integer::sum);
                } else if (item instanceof PlainWheel w) {
                    count.merge(plain(route, w), 1, Integer::sum);
                }
            }
        }
        count.forEach((words, n) -> add(n, words.get(0), words.get(1), List.of(words.get(2))));
    }

    private static List<String> toothed(BeltRoute route, ToothedWheel w) {
        return List.of(
                w.turnedBy().isPresent() ? "toothed pulley" : "toothed idler",
                w.teeth()
                        + " teeth, pitch "
                        + Sizes.length(route.belt().pitch())
                        + ", for a belt "
                        + Sizes.length(route.belt().width())
                        + " wide",
                w.turnedBy().isPresent() ? "bore, tooth profile" : "bearing, tooth profile");
    }

    private static List<String> plain(BeltRoute route, PlainWheel w) {
        return List.of(
                "smooth idler",
                Sizes.length(2 * w.radius())
                        + " across the belt's cord, for a belt "
                        + Sizes.length(route.belt().width())
                        + " wide",
                "bearing, flanges; its own diameter is less by twice the cord's depth");
    }

    private void motors() {
        Map<Stepper, Integer> count = new LinkedHashMap<>();
        for (GantryMotor motor : gantry.motors()) {
            count.merge(motor.stepper(), 1, Integer::sum);
        }
        count.forEach(
                (s, n) -> add(n, "gantry motor", Sizes.motor(s), Sizes.motorOpen(s.pullOut())));
        gantry.motors().stream()
                .flatMap(m -> m.crossShaft().stream())
                .forEach(
                        s ->
                                add(
                                        1,
                                        "cross shaft",
                                        "torsional stiffness "
                                                + Sizes.given(
                                                        Dimension.TORSION_STIFFNESS, s.stiffness())
                                                + " or more",
                                        List.of("diameter, length, bearings")));
    }
}
