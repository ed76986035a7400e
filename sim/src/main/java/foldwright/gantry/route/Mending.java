// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks for the one change of one point that makes a broken route work: another body at the same
 * place (bridge in the middle of its travel) or the other sense of wrap. That point is the
 * likeliest culprit.
 */
final class Mending {
    private final BeltLayout layout;
    private final List<String> points = new ArrayList<>();
    private final List<String> changes = new ArrayList<>();

    private Mending(BeltLayout layout) {
        this.layout = layout;
    }

    static List<RouteFinding> hint(BeltLayout layout, List<RouteFinding> faults) {
        Mending mending = new Mending(layout);
        for (int b = 0; b < layout.belts().size(); b++) {
            String name = layout.belts().get(b).name();
            if (faults.stream().anyMatch(f -> f.belt().equals(name))) {
                mending.tryBelt(b);
            }
        }
        return mending.points.isEmpty() ? faults : faults.stream().map(mending::with).toList();
    }

    private RouteFinding with(RouteFinding fault) {
        List<String> named = new ArrayList<>(points);
        fault.points().stream().filter(p -> !named.contains(p)).forEach(named::add);
        return new RouteFinding(
                fault.fault(),
                fault.belt(),
                named,
                fault.message() + "; it would work with " + String.join(", or with ", changes));
    }

    private void tryBelt(int b) {
        Belt belt = layout.belts().get(b);
        for (int i = 0; i < belt.points().size(); i++) {
            RoutePoint point = belt.points().get(i);
            if (point instanceof Wheel wheel) {
                Wheel other = wheel.turning(wheel.sense().opposite());
                attempt(b, i, other, "\"" + wheel.name() + "\" turning the other way");
            }
            for (Carrier carrier : Carrier.values()) {
                if (carrier != point.carrier()) {
                    String change = "\"" + point.name() + "\" on the " + carrier.word();
                    attempt(b, i, carried(point, carrier), change);
                }
            }
        }
    }

    private void attempt(int b, int i, RoutePoint other, String change) {
        Belt belt = layout.belts().get(b);
        List<RoutePoint> route = new ArrayList<>(belt.points());
        route.set(i, other);
        if (RouteCheck.faults(layout.withBelt(b, belt.through(route))).isEmpty()) {
            points.add(other.name());
            changes.add(change);
        }
    }

    private RoutePoint carried(RoutePoint point, Carrier to) {
        double x = point.x() + originX(point.carrier()) - originX(to);
        double y = point.y() + originY(point.carrier()) - originY(to);
        return point instanceof Wheel wheel
                ? wheel.on(to).at(x, y)
                : new Anchor(point.name(), to, x, y);
    }

    private double originX(Carrier carrier) {
        return carrier == Carrier.CARRIAGE ? layout.travel().xMid() : 0;
    }

    private double originY(Carrier carrier) {
        return carrier == Carrier.BASE ? 0 : layout.travel().yMid();
    }
}
