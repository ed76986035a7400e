// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import foldwright.gantry.route.RouteFinding.Fault;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Whether the belts of a layout can work, and if not, at which wheel they fail.
 *
 * <p>Order: names and bodies of axles; tangents over the whole travel, with a tooth of free belt at
 * least (common practice, no source: no clamp rides onto a wheel); wraps of 3 to 260 degrees, 60
 * and more at a motor (common practice, no source); nothing in the way in the plane of a belt;
 * motors settle the place of the carriage without stretching a belt; with wheels rolling, no
 * tension changes by more than 5 % over the travel.
 *
 * <p>Not covered: whether bodies other than wheels stand in the way.
 */
public final class RouteCheck {
    private static final double WRAP_MIN = Math.toRadians(3);
    private static final double WRAP_MAX = Math.toRadians(260);
    private static final double MOTOR_WRAP_MIN = Math.toRadians(60);

    private static final double SWING = Math.toRadians(10);

    /** Places looked at along each axis, ends included. */
    private static final int GRID = 5;

    private final BeltLayout layout;
    private final BeltSystem system;
    private final List<RouteFinding> findings = new ArrayList<>();
    private final List<double[]> headings = new ArrayList<>();

    private RouteCheck(BeltLayout layout) {
        this.layout = layout;
        system = new BeltSystem(layout, IdlerModel.LUMPED);
    }

    /**
     * All faults of the first group of checks that finds one; empty where the layout works. Where
     * turning one wheel's sense or moving one point to another body would mend the route, that
     * point is named first and the message says so.
     */
    public static List<RouteFinding> check(BeltLayout layout) {
        List<RouteFinding> faults = faults(layout);
        return faults.isEmpty() ? faults : Mending.hint(layout, faults);
    }

    /** As {@link #check}, without looking for what would mend the route. */
    static List<RouteFinding> faults(BeltLayout layout) {
        RouteCheck check = new RouteCheck(layout);
        check.checkNames();
        if (check.findings.isEmpty()) {
            check.overTravel(check::checkTangents);
        }
        if (check.findings.isEmpty()) {
            check.overTravel(check::checkWraps);
            check.rememberHeadings();
            check.overTravel(check::checkHeadings);
            check.overTravel(() -> PlaneCheck.check(check.layout, check.system, check.findings));
        }
        if (check.findings.isEmpty()) {
            MotionCheck.check(check.layout, check.system, check.findings);
        }
        return distinct(check.findings);
    }

    /**
     * The relation between motors and carriage.
     *
     * @throws IllegalArgumentException where the route does not work, with every finding
     */
    public static MotionRelation relation(BeltSystem system) {
        system.place(system.reference());
        Optional<MotionRelation> relation = MotionRelation.of(system);
        return relation.filter(MotionRelation::settles)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "the motors do not settle the place of the carriage: "
                                                + check(system.layout())));
    }

    private static List<RouteFinding> distinct(List<RouteFinding> all) {
        Map<String, RouteFinding> kept = new java.util.LinkedHashMap<>();
        for (RouteFinding f : all) {
            kept.putIfAbsent(f.fault() + f.belt() + f.points(), f);
        }
        return List.copyOf(kept.values());
    }

    private void overTravel(Runnable look) {
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                double x = layout.travel().xAt(i / (GRID - 1.0));
                double y = layout.travel().yAt(j / (GRID - 1.0));
                system.place(Pose.at(x, y));
                look.run();
            }
        }
    }

    private void checkNames() {
        Map<String, Carrier> bodyOfAxle = new HashMap<>();
        for (Belt belt : layout.belts()) {
            for (int i = 0; i < belt.points().size(); i++) {
                RoutePoint point = belt.points().get(i);
                if (point instanceof Wheel wheel) {
                    checkAxle(belt, wheel, bodyOfAxle);
                } else {
                    checkAnchor(belt, i);
                }
            }
        }
        for (String axle : layout.drivenAxles()) {
            if (!bodyOfAxle.containsKey(axle) && !shaftEnd(axle)) {
                add(
                        Fault.AXLE_UNKNOWN,
                        layout.belts().get(0).name(),
                        List.of(axle),
                        "motor axle \"%s\" carries no wheel of any belt; axles with wheels: %s",
                        axle,
                        bodyOfAxle.keySet());
            }
        }
    }

    private boolean shaftEnd(String axle) {
        return layout.shafts().stream()
                .anyMatch(s -> s.first().equals(axle) || s.second().equals(axle));
    }

    private void checkAnchor(Belt belt, int i) {
        int last = belt.points().size() - 1;
        boolean openEnd = !belt.closed() && (i == 0 || i == last);
        if (belt.closed() || (!openEnd && !(belt.points().get(i) instanceof Anchor))) {
            add(
                    Fault.MISPLACED_ANCHOR,
                    belt.name(),
                    List.of(belt.points().get(i).name()),
                    "anchor \"%s\" stands inside a route that starts at a wheel; allowed: start"
                            + " and end at an anchor, or wheels only",
                    belt.points().get(i).name());
        }
    }

    private void checkAxle(Belt belt, Wheel wheel, Map<String, Carrier> bodyOfAxle) {
        if (wheel == belt.points().get(belt.points().size() - 1) && !belt.closed()) {
            add(
                    Fault.MISPLACED_ANCHOR,
                    belt.name(),
                    List.of(wheel.name()),
                    "the belt starts at an anchor and ends at wheel \"%s\"; allowed: an anchor at"
                            + " both ends",
                    wheel.name());
        }
        if (wheel.axle().isEmpty()) {
            return;
        }
        String axle = wheel.axle().get();
        Carrier other = bodyOfAxle.putIfAbsent(axle, wheel.carrier());
        if (other != null && other != wheel.carrier()) {
            add(
                    Fault.AXLE_ON_TWO_BODIES,
                    belt.name(),
                    List.of(wheel.name()),
                    "wheel \"%s\" is on the %s, but its axle \"%s\" is on the %s",
                    wheel.name(),
                    wheel.carrier().word(),
                    axle,
                    other.word());
        }
        if (wheel.surface() == Wheel.Surface.PLAIN) {
            add(
                    Fault.MOTOR_WHEEL_PLAIN,
                    belt.name(),
                    List.of(wheel.name()),
                    "wheel \"%s\" sits on the torque-carrying axle \"%s\" but has no teeth",
                    wheel.name(),
                    axle);
        }
    }

    private void checkTangents() {
        for (int b = 0; b < layout.belts().size(); b++) {
            BeltGeometry g = system.geometry(b);
            double tooth = g.belt().pitch();
            for (int span = 0; span < g.spans(); span++) {
                double length = g.length(span);
                if (!(length > 0)) {
                    addStrand(
                            Fault.NO_TANGENT,
                            g,
                            span,
                            "no strand can run from \"%s\" to \"%s\" with these senses: their"
                                    + " circles overlap somewhere in the travel");
                } else if (length < tooth) {
                    addStrand(
                            Fault.STRAND_TOO_SHORT,
                            g,
                            span,
                            "only %3$.2f mm of free belt are left between \"%1$s\" and \"%2$s\""
                                    + " somewhere in the travel; allowed: one tooth, %4$.1f mm,"
                                    + " and more",
                            1e3 * length,
                            1e3 * tooth);
                }
            }
        }
    }

    private void rememberHeadings() {
        system.place(system.reference());
        for (int b = 0; b < layout.belts().size(); b++) {
            BeltGeometry g = system.geometry(b);
            double[] list = new double[g.spans()];
            for (int span = 0; span < list.length; span++) {
                list[span] = g.heading(span);
            }
            headings.add(list);
        }
    }

    /** A strand that swings round has had its ends pass each other. */
    private void checkHeadings() {
        for (int b = 0; b < layout.belts().size(); b++) {
            BeltGeometry g = system.geometry(b);
            for (int span = 0; span < g.spans(); span++) {
                double swing = g.heading(span) - headings.get(b)[span];
                swing -= 2 * Math.PI * Math.rint(swing / (2 * Math.PI));
                if (Math.abs(swing) > SWING) {
                    addStrand(
                            Fault.STRAND_TURNS,
                            g,
                            span,
                            "the strand from \"%s\" to \"%s\" turns by %.1f degrees over the travel,"
                                    + " so its ends come near or pass each other aslant; allowed: 10",
                            Math.toDegrees(Math.abs(swing)));
                }
            }
        }
    }

    private void checkWraps() {
        for (int b = 0; b < layout.belts().size(); b++) {
            BeltGeometry g = system.geometry(b);
            for (int i = 0; i < g.points(); i++) {
                if (g.belt().points().get(i) instanceof Wheel wheel) {
                    checkWrap(g.belt(), wheel, g.wrap(i));
                }
            }
        }
    }

    private void checkWrap(Belt belt, Wheel wheel, double wrap) {
        Fault fault =
                wrap < WRAP_MIN
                        ? Fault.WRAP_TOO_SMALL
                        : wrap > WRAP_MAX
                                ? Fault.WRAP_TOO_LARGE
                                : wheel.axle().isPresent() && wrap < MOTOR_WRAP_MIN
                                        ? Fault.MOTOR_WRAP_TOO_SMALL
                                        : null;
        if (fault != null) {
            add(
                    fault,
                    belt.name(),
                    List.of(wheel.name()),
                    "the belt touches wheel \"%s\" over %.1f degrees; allowed: 3 to 260, 60 and"
                            + " more where the axle carries torque; wrong sense of wrap?",
                    wheel.name(),
                    Math.toDegrees(wrap));
        }
    }

    /** A fault of a strand: the format gets the names of its ends first, then the values. */
    private void addStrand(Fault fault, BeltGeometry g, int span, String format, Object... values) {
        String from = g.belt().points().get(span).name();
        String to = g.belt().points().get(g.endOf(span)).name();
        List<Object> all = new ArrayList<>(List.of(from, to));
        all.addAll(List.of(values));
        add(fault, g.belt().name(), List.of(from, to), format, all.toArray());
    }

    private void add(
            Fault fault, String belt, List<String> points, String format, Object... values) {
        findings.add(
                new RouteFinding(fault, belt, points, String.format(Locale.ROOT, format, values)));
    }
}
