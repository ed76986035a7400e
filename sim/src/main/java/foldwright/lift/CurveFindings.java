// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Finding.Kind;
import foldwright.mechanics.solve.MovingBalance;
import foldwright.quantity.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Reads from a finished curve what a maker should know by name. */
final class CurveFindings {
    /** Share of the Euler load and of the whirling speed that is used at most. */
    private static final double SCREW_SHARE = 0.8;

    private final LiftModel model;
    private final List<Finding> findings = new ArrayList<>();

    CurveFindings(LiftModel model) {
        this.model = model;
    }

    List<Finding> all() {
        return List.copyOf(findings);
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    /** Springs that let go or come solid, equal ones together. */
    void springs(List<SpringEvents.Event> events) {
        Set<String> told = new TreeSet<>();
        for (SpringEvents.Event e : events) {
            String group = e.spring().spring().name();
            String key = group + e.kind() + Math.round(e.height() * 1e7);
            if (told.add(key)) {
                findings.add(e.kind() == SpringEvents.Kind.FREE ? letGo(e) : solid(e));
            }
        }
    }

    private static Finding letGo(SpringEvents.Event e) {
        String name = e.spring().spring().name();
        double free = e.spring().law().freeCoordinate();
        String text = "\"" + name + "\" let go at a pivot height of " + millimetres(e.height());
        return new Finding(Kind.SPRING_LETS_GO, name, e.height(), e.height(), free, text);
    }

    private Finding solid(SpringEvents.Event e) {
        String name = e.spring().spring().name();
        double force = e.spring().law().force(e.spring().law().limitCoordinate());
        String text =
                String.format(
                        Locale.ROOT,
                        "\"%s\" are pressed to solid below a pivot height of %.1f mm, at %.4g %s",
                        name,
                        e.height() * 1e3,
                        force,
                        e.spring().spring().law().turns() ? "N·m" : "N");
        return new Finding(Kind.SPRING_SOLID, name, model.lowest(), e.height(), force, text);
    }

    /** Pop-open and reversals of the nut load. */
    void nutLoad(List<CurvePoint> points, Direction way) {
        if (way == Direction.RAISING && !points.isEmpty()) {
            popOpen(points);
        }
        for (int i = 1; i < points.size() - 1; i++) {
            CurvePoint a = points.get(i - 1);
            CurvePoint p = points.get(i);
            CurvePoint b = points.get(i + 1);
            boolean smallest =
                    Math.abs(p.footForce()) <= Math.abs(a.footForce())
                            && Math.abs(p.footForce()) <= Math.abs(b.footForce());
            if (smallest && a.footForce() * b.footForce() < 0) {
                reversal(a, p, b, way);
            }
        }
    }

    private void popOpen(List<CurvePoint> points) {
        if (points.get(0).residualLoad() >= 0) {
            return;
        }
        double top = points.get(0).height();
        for (CurvePoint p : points) {
            if (p.residualLoad() >= 0) {
                break;
            }
            top = p.height();
        }
        double latch = -points.get(0).residualLoad();
        String text =
                "pops open when unlatched: the springs lift the folded deck with "
                        + Printed.in("N", latch)
                        + " more than its weight, up to a pivot height of "
                        + millimetres(top)
                        + "; the latch must hold that force";
        findings.add(new Finding(Kind.POPS_OPEN, "", points.get(0).height(), top, latch, text));
    }

    private void reversal(CurvePoint a, CurvePoint p, CurvePoint b, Direction way) {
        double slope = (b.footForce() - a.footForce()) / (b.height() - a.height());
        String text =
                "the load on the nut changes sides at a pivot height of "
                        + millimetres(p.height())
                        + " while "
                        + way.label()
                        + ": the play of the nut shows there";
        findings.add(new Finding(Kind.NUT_LOAD_REVERSES, "", p.height(), p.height(), slope, text));
    }

    /** Height bands in which the motor cannot move the lift. */
    void stalls(List<CurvePoint> points, Direction way) {
        int from = -1;
        for (int i = 0; i <= points.size(); i++) {
            boolean stalls = i < points.size() && points.get(i).margin() < 1;
            if (stalls && from < 0) {
                from = i;
            } else if (!stalls && from >= 0) {
                stall(points, from, i, way);
                from = -1;
            }
        }
    }

    private void stall(List<CurvePoint> points, int from, int to, Direction way) {
        double low =
                from == 0
                        ? points.get(0).height()
                        : crossing(points.get(from - 1), points.get(from));
        double high =
                to == points.size()
                        ? points.get(to - 1).height()
                        : crossing(points.get(to - 1), points.get(to));
        CurvePoint worst = points.get(from);
        for (int i = from; i < to; i++) {
            worst = points.get(i).margin() < worst.margin() ? points.get(i) : worst;
        }
        String text =
                String.format(
                        Locale.ROOT,
                        "the motor stalls %s between pivot heights of %.1f and %.1f mm: it needs"
                                + " %.3g N·m at %.1f mm and gives %.3g",
                        way.label(),
                        low * 1e3,
                        high * 1e3,
                        Math.abs(worst.motor().needed()),
                        worst.height() * 1e3,
                        worst.motor().available());
        findings.add(new Finding(Kind.STALLS, "motor", low, high, worst.margin(), text));
    }

    /** Where the margin passes 1 between two points, straight between them. */
    private static double crossing(CurvePoint a, CurvePoint b) {
        double ga = Math.abs(a.motor().needed()) - a.motor().available();
        double gb = Math.abs(b.motor().needed()) - b.motor().available();
        return a.height() + (b.height() - a.height()) * ga / (ga - gb);
    }

    /** Screws near buckling or whirling. */
    void screws(List<CurvePoint> points) {
        CurvePoint column = null;
        CurvePoint whirl = null;
        for (CurvePoint p : points) {
            column = column == null || buckling(p) > buckling(column) ? p : column;
            whirl = whirl == null || whirling(p) > whirling(whirl) ? p : whirl;
        }
        if (column != null && buckling(column) > SCREW_SHARE) {
            tell(Kind.SCREW_BUCKLES, column, buckling(column), "buckling load");
        }
        if (whirl != null && whirling(whirl) > SCREW_SHARE) {
            tell(Kind.SCREW_WHIRLS, whirl, whirling(whirl), "whirling speed");
        }
    }

    private void tell(Kind kind, CurvePoint p, double use, String of) {
        String text =
                String.format(
                        Locale.ROOT,
                        "the screw reaches %.0f %% of its %s at a pivot height of %.1f mm",
                        use * 100,
                        of,
                        p.height() * 1e3);
        findings.add(new Finding(kind, "screw", p.height(), p.height(), use, text));
    }

    private static double buckling(CurvePoint p) {
        return p.screw().bucklingUse();
    }

    private static double whirling(CurvePoint p) {
        return p.screw().speed() / p.screw().whirlSpeed();
    }

    /** Heights without a balance that no lock explains, all of one direction together. */
    void gaps(List<CurveRun.Gap> gaps, Direction way) {
        List<Double> open =
                gaps.stream()
                        .filter(g -> g.outcome() == MovingBalance.Outcome.FAILED)
                        .map(CurveRun.Gap::height)
                        .toList();
        if (open.isEmpty()) {
            return;
        }
        double low = open.get(0);
        double high = open.get(open.size() - 1);
        String text =
                String.format(
                        Locale.ROOT,
                        "no balance of loads was found while %s at %d heights between %.1f and"
                                + " %.1f mm: nothing is known of them",
                        way.label(),
                        open.size(),
                        low * 1e3,
                        high * 1e3);
        findings.add(new Finding(Kind.NOT_SOLVED, "", low, high, 0, text));
    }

    /** A length with one decimal, for sentences. */
    static String millimetres(double length) {
        return Printed.number(length * 1e3, 1) + " mm";
    }
}
