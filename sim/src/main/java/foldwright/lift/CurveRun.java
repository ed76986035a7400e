// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.mechanics.solve.MovingBalance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Runs a lift through its travel both ways and gathers the points of the force curve.
 *
 * <p>Heights are even, with points added exactly where springs let go, where the force on the feet
 * changes sides, and around the lowest motor margin.
 */
final class CurveRun {
    private final MovingLift lift;
    private final PointMaker maker;
    private final RiseLaw rise;

    CurveRun(MovingLift lift, PointMaker maker, RiseLaw rise) {
        this.lift = lift;
        this.maker = maker;
        this.rise = rise;
    }

    /** Points of one direction and where none were found. */
    record Track(List<CurvePoint> points, List<Gap> gaps) {}

    /** A height without a point. */
    record Gap(double height, MovingBalance.Outcome outcome) {}

    /** Asked deck speed at a height [m/s]. */
    double deckSpeed(double height) {
        return rise.deckSpeed(height, Math.abs(lift.model().path(0).rate(height)));
    }

    /** The point at a height; empty if the lift is locked there. */
    Optional<CurvePoint> at(double height, Direction way) {
        MovingBalance b = passing(height, way);
        return b.outcome() == MovingBalance.Outcome.BALANCED
                ? Optional.of(point(b, height, way))
                : Optional.empty();
    }

    MovingBalance passing(double height, Direction way) {
        return lift.following(
                lift.model().scissor().atHeight(height), way.sign() * deckSpeed(height));
    }

    private CurvePoint point(MovingBalance b, double height, Direction way) {
        return maker.point(
                b.balance(), lift.model().scissor().atHeight(height), way, deckSpeed(height));
    }

    /** All points of one direction at the given rising heights, and those refined between them. */
    Track run(double[] heights, Direction way) {
        List<CurvePoint> points = new ArrayList<>(heights.length + 8);
        List<CurvePoint> more = new ArrayList<>();
        List<Gap> gaps = new ArrayList<>();
        for (double h : heights) {
            MovingBalance b = passing(h, way);
            if (b.outcome() == MovingBalance.Outcome.BALANCED) {
                points.add(point(b, h, way));
                // At once, while the loads of the neighbours are at hand.
                lastReversal(points, way).ifPresent(more::add);
            } else {
                gaps.add(new Gap(h, b.outcome()));
            }
        }
        worst(points, way, more);
        points.addAll(more);
        points.sort(Comparator.comparingDouble(CurvePoint::height));
        return new Track(points, gaps);
    }

    /**
     * Where the foot force changes sides between the last two points, by the secant rule kept
     * inside its bracket.
     */
    private Optional<CurvePoint> lastReversal(List<CurvePoint> points, Direction way) {
        if (points.size() < 2) {
            return Optional.empty();
        }
        CurvePoint a = points.get(points.size() - 2);
        CurvePoint b = points.get(points.size() - 1);
        return a.footForce() * b.footForce() < 0 ? reversal(a, b, way) : Optional.empty();
    }

    private Optional<CurvePoint> reversal(CurvePoint from, CurvePoint to, Direction way) {
        CurvePoint a = from;
        CurvePoint b = to;
        CurvePoint best = null;
        for (int i = 0; i < 6; i++) {
            double h =
                    a.height()
                            - a.footForce()
                                    * (b.height() - a.height())
                                    / (b.footForce() - a.footForce());
            Optional<CurvePoint> mid = at(h, way);
            if (mid.isEmpty()) {
                break;
            }
            best = mid.get();
            // Loads along a course are no more accurate than this.
            if (Math.abs(best.footForce())
                    < 1e-7 * (Math.abs(from.footForce()) + Math.abs(to.footForce()))) {
                break;
            }
            if (best.footForce() * a.footForce() > 0) {
                a = best;
            } else {
                b = best;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Parabola through the worst point and its neighbours, where the curve is smooth there. */
    private void worst(List<CurvePoint> points, Direction way, List<CurvePoint> out) {
        int w = 0;
        for (int i = 1; i < points.size(); i++) {
            w = use(points.get(i)) > use(points.get(w)) ? i : w;
        }
        if (w == 0 || w >= points.size() - 1) {
            return;
        }
        double h0 = points.get(w - 1).height();
        double h1 = points.get(w).height();
        double h2 = points.get(w + 1).height();
        double s01 = (use(points.get(w)) - use(points.get(w - 1))) / (h1 - h0);
        double s12 = (use(points.get(w + 1)) - use(points.get(w))) / (h2 - h1);
        double curve = (s12 - s01) / (h2 - h0);
        double top = 0.5 * (h0 + h1) - 0.5 * s01 / curve;
        if (curve < 0 && top > h0 && top < h2 && Math.abs(top - h1) > 1e-6 * h1) {
            at(top, way).ifPresent(out::add);
        }
    }

    /** Share of the available torque that is needed [1]. */
    private static double use(CurvePoint p) {
        return 1 / p.margin();
    }
}
