// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.gantry.route.RouteFinding.Fault;
import foldwright.proof.GantryLayouts;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Faults planted in working routes, one at a time: every one is refused with a wheel at the fault
 * named, or keeps a belt of constant length and the same relation of motors and carriage.
 */
class RouteFaultsTest {
    private static final double R = 0.00636619772;

    private record Planted(String what, BeltLayout layout, Set<String> near, BeltLayout sound) {}

    @Test
    void everyPlantedFaultIsRefusedAtItsPlaceOrHarmless() {
        List<Planted> faults = new ArrayList<>();
        GantryLayouts.Size size = GantryLayouts.Size.checks(R);
        for (BeltLayout layout :
                List.of(
                        GantryLayouts.singleLoop(size),
                        GantryLayouts.crossed(size),
                        GantryLayouts.bothEnds(size, 3.0),
                        GantryLayouts.oneEnd(size))) {
            for (int b = 0; b < layout.belts().size(); b++) {
                plant(layout, b, faults);
            }
        }
        int refused = 0;
        int harmless = 0;
        List<String> missed = new ArrayList<>();
        for (Planted fault : faults) {
            List<RouteFinding> findings = RouteCheck.check(fault.layout);
            if (findings.isEmpty()) {
                if (!sameRelation(fault)) {
                    missed.add(fault.what + ": passes, but moves the tool differently");
                }
                harmless++;
            } else {
                refused++;
                Set<String> named =
                        findings.stream()
                                .flatMap(f -> f.points().stream())
                                .collect(Collectors.toSet());
                if (fault.near.stream().noneMatch(named::contains)) {
                    missed.add(fault.what + ": blamed on " + findings);
                }
            }
        }
        assertThat(missed).isEmpty();
        assertThat(faults.size()).isGreaterThanOrEqualTo(150);
        assertThat(refused).isGreaterThan(4 * harmless);
    }

    /**
     * At one end of the travel the clamp stands half a millimetre, then three, before its wheel.
     */
    @Test
    void aClampThatRidesOntoItsWheelIsRefused() {
        BeltLayout sound = GantryLayouts.singleLoop(GantryLayouts.Size.checks(R));

        List<RouteFinding> tooNear = RouteCheck.check(withFreeBelt(sound, 0.5e-3));

        assertThat(tooNear).extracting(RouteFinding::fault).contains(Fault.STRAND_TOO_SHORT);
        assertThat(tooNear.get(0).points()).contains(sound.belts().get(0).points().get(0).name());
        assertThat(tooNear.get(0).message()).contains("only 0.50 mm").contains("2.0 mm");
        assertThat(RouteCheck.check(withFreeBelt(sound, 3e-3))).isEmpty();
    }

    /** The clamp moved along its strand until so much belt is left where it comes nearest. */
    private static BeltLayout withFreeBelt(BeltLayout layout, double left) {
        BeltSystem system = new BeltSystem(layout, IdlerModel.LUMPED);
        double least = Double.POSITIVE_INFINITY;
        for (double end : new double[] {0, 1}) {
            system.place(Pose.at(layout.travel().xAt(end), layout.travel().yAt(0.5)));
            least = Math.min(least, system.geometry(0).length(0));
        }
        Belt belt = layout.belts().get(0);
        RoutePoint clamp = belt.points().get(0);
        double further = Math.signum(system.geometry(0).directionX(0)) * (least - left);
        return layout.withBelt(
                0,
                belt.through(
                        replace(
                                belt,
                                0,
                                new Anchor(
                                        clamp.name(),
                                        clamp.carrier(),
                                        clamp.x() + further,
                                        clamp.y()))));
    }

    private static boolean sameRelation(Planted fault) {
        MotionRelation now = RouteCheck.relation(new BeltSystem(fault.layout, IdlerModel.LUMPED));
        MotionRelation sound = RouteCheck.relation(new BeltSystem(fault.sound, IdlerModel.LUMPED));
        for (int m = 0; m < 2; m++) {
            double scale = Math.abs(sound.anglePerX(m)) + Math.abs(sound.anglePerY(m));
            // A belt that gives within its 5 % of tension may shift the relation as little.
            if (Math.abs(now.anglePerX(m) - sound.anglePerX(m)) > 2e-3 * scale
                    || Math.abs(now.anglePerY(m) - sound.anglePerY(m)) > 2e-3 * scale) {
                return false;
            }
        }
        return true;
    }

    private static void plant(BeltLayout layout, int b, List<Planted> faults) {
        Belt belt = layout.belts().get(b);
        for (int i = 0; i < belt.points().size(); i++) {
            RoutePoint point = belt.points().get(i);
            Set<String> near = around(belt, i);
            String at = layout.name() + ", " + point.name() + ", ";
            for (Carrier carrier : Carrier.values()) {
                if (carrier != point.carrier()) {
                    RoutePoint moved = moved(point, carrier, 0.18);
                    add(faults, layout, b, at + "on " + carrier, replace(belt, i, moved), near);
                }
            }
            if (point instanceof Wheel w) {
                Set<String> self = around(belt, i);
                add(
                        faults,
                        layout,
                        b,
                        at + "sense",
                        replace(belt, i, w.turning(w.sense().opposite())),
                        self);
                List<RoutePoint> without = new ArrayList<>(belt.points());
                without.remove(i);
                add(faults, layout, b, at + "missing", without, near);
                for (double[] shift :
                        new double[][] {{0.03, 0}, {-0.03, 0}, {0, 0.03}, {0, -0.03}}) {
                    Wheel shifted = w.at(w.x() + shift[0], w.y() + shift[1]);
                    String way = at + "shift " + shift[0] + " " + shift[1];
                    add(faults, layout, b, way, replace(belt, i, shifted), self);
                }
                if (w.axle().isPresent()) {
                    Wheel plain = w.with(Wheel.Surface.PLAIN);
                    add(faults, layout, b, at + "plain", replace(belt, i, plain), Set.of(w.name()));
                }
                if (i + 1 < belt.points().size() && belt.points().get(i + 1) instanceof Wheel) {
                    List<RoutePoint> swapped = new ArrayList<>(belt.points());
                    swapped.set(i, belt.points().get(i + 1));
                    swapped.set(i + 1, w);
                    Set<String> wide = new HashSet<>(near);
                    wide.addAll(around(belt, i + 1));
                    add(faults, layout, b, at + "order", swapped, wide);
                }
            }
        }
    }

    /** Same place in the middle of the travel, carried by another body. */
    private static RoutePoint moved(RoutePoint point, Carrier to, double bridgeY) {
        double y = point.y() + (point.carrier() == Carrier.BASE ? 0 : bridgeY);
        double localY = y - (to == Carrier.BASE ? 0 : bridgeY);
        return point instanceof Wheel w
                ? w.on(to).at(w.x(), localY)
                : new Anchor(point.name(), to, point.x(), localY);
    }

    private static Set<String> around(Belt belt, int i) {
        Set<String> names = new HashSet<>();
        for (int k = Math.max(0, i - 1); k <= Math.min(belt.points().size() - 1, i + 1); k++) {
            names.add(belt.points().get(k).name());
        }
        if (belt.points().get(i) instanceof Wheel w) {
            w.axle().ifPresent(names::add);
        }
        return names;
    }

    private static List<RoutePoint> replace(Belt belt, int i, RoutePoint point) {
        List<RoutePoint> points = new ArrayList<>(belt.points());
        points.set(i, point);
        return points;
    }

    private static void add(
            List<Planted> faults,
            BeltLayout layout,
            int b,
            String what,
            List<RoutePoint> points,
            Set<String> near) {
        BeltLayout changed = layout.withBelt(b, layout.belts().get(b).through(points));
        faults.add(new Planted(what, changed, near, layout));
    }
}
