// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import foldwright.gantry.route.RouteFinding.Fault;
import java.util.List;
import java.util.Locale;

/** Whether strands and wheels that lie in one plane get into each other's way at one pose. */
final class PlaneCheck {
    /** Levels closer than this are one plane [m]. */
    private static final double SAME_LEVEL = 1e-6;

    /** A strand may dip into a wheel by this share of its radius before it counts. */
    private static final double TOUCH = 0.02;

    private final BeltGeometry a;
    private final BeltGeometry b;
    private final List<RouteFinding> findings;

    private PlaneCheck(BeltGeometry a, BeltGeometry b, List<RouteFinding> findings) {
        this.a = a;
        this.b = b;
        this.findings = findings;
    }

    static void check(BeltLayout layout, BeltSystem system, List<RouteFinding> findings) {
        int belts = layout.belts().size();
        for (int i = 0; i < belts; i++) {
            for (int j = 0; j < belts; j++) {
                double gap = layout.belts().get(i).level() - layout.belts().get(j).level();
                if (Math.abs(gap) < SAME_LEVEL) {
                    PlaneCheck pair =
                            new PlaneCheck(system.geometry(i), system.geometry(j), findings);
                    pair.checkStrandsAgainstWheels();
                    if (i <= j) {
                        pair.checkStrandsAgainstStrands();
                        pair.checkWheelsAgainstWheels();
                    }
                }
            }
        }
    }

    private void checkStrandsAgainstWheels() {
        for (int span = 0; span < a.spans(); span++) {
            for (int w = 0; w < b.points(); w++) {
                boolean own = a == b && (w == span || w == a.endOf(span));
                double r = Math.abs(b.signedRadius(w));
                if (!own && r > 0 && distance(span, w) < (1 - TOUCH) * r) {
                    add(
                            Fault.STRAND_THROUGH_WHEEL,
                            List.of(name(a, span), name(a, a.endOf(span)), name(b, w)),
                            "the strand from \"%s\" to \"%s\" runs through wheel \"%s\" in the"
                                    + " same plane");
                }
            }
        }
    }

    private double distance(int span, int w) {
        double px = b.centreX(w) - a.startX(span);
        double py = b.centreY(w) - a.startY(span);
        double along = px * a.directionX(span) + py * a.directionY(span);
        double held = Math.max(0, Math.min(a.length(span), along));
        return Math.hypot(px - held * a.directionX(span), py - held * a.directionY(span));
    }

    private void checkStrandsAgainstStrands() {
        for (int s = 0; s < a.spans(); s++) {
            for (int t = a == b ? s + 1 : 0; t < b.spans(); t++) {
                if (cross(s, t)) {
                    add(
                            Fault.STRANDS_CROSS,
                            List.of(
                                    name(a, s),
                                    name(a, a.endOf(s)),
                                    name(b, t),
                                    name(b, b.endOf(t))),
                            "the strand from \"%s\" to \"%s\" crosses the one from \"%s\" to"
                                    + " \"%s\" in the same plane");
                }
            }
        }
    }

    /** Whether two strands meet inside both, ends left out. */
    private boolean cross(int s, int t) {
        double det = a.directionX(s) * b.directionY(t) - a.directionY(s) * b.directionX(t);
        if (Math.abs(det) < 1e-9) {
            return false;
        }
        double dx = b.startX(t) - a.startX(s);
        double dy = b.startY(t) - a.startY(s);
        double alongS = (dx * b.directionY(t) - dy * b.directionX(t)) / det;
        double alongT = (dx * a.directionY(s) - dy * a.directionX(s)) / det;
        double margin = 1e-6;
        return alongS > margin
                && alongS < a.length(s) - margin
                && alongT > margin
                && alongT < b.length(t) - margin;
    }

    private void checkWheelsAgainstWheels() {
        for (int v = 0; v < a.points(); v++) {
            for (int w = a == b ? v + 1 : 0; w < b.points(); w++) {
                double rv = Math.abs(a.signedRadius(v));
                double rw = Math.abs(b.signedRadius(w));
                double gap = Math.hypot(a.centreX(v) - b.centreX(w), a.centreY(v) - b.centreY(w));
                if (rv > 0 && rw > 0 && gap < (1 - TOUCH) * (rv + rw)) {
                    add(
                            Fault.WHEELS_OVERLAP,
                            List.of(name(a, v), name(b, w)),
                            "wheels \"%s\" and \"%s\" overlap in the same plane");
                }
            }
        }
    }

    private static String name(BeltGeometry g, int point) {
        return g.belt().points().get(point).name();
    }

    private void add(Fault fault, List<String> points, String format) {
        String message =
                String.format(Locale.ROOT, format, points.toArray())
                        + String.format(
                                Locale.ROOT, " with the bridge at y = %.0f mm", 1e3 * bridgeY());
        findings.add(new RouteFinding(fault, a.belt().name(), points, message));
    }

    private double bridgeY() {
        for (int i = 0; i < a.points(); i++) {
            if (a.belt().points().get(i).carrier() != Carrier.BASE) {
                return a.centreY(i) - a.leverY(i);
            }
        }
        return 0;
    }
}
