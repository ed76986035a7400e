// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import java.util.List;

/**
 * How far a force curve can be trusted: around a whole cycle weights and springs must give back
 * what they took, the shares must add up to the whole at every point, and leaving out every other
 * height must not move the worst margin.
 */
public final class CurveTrust {
    /** Bound of the energy errors, that of the ledger of runs in time [1]. */
    private static final double ENERGY = 1e-3;

    /** Bound of the change of the worst margin [1]. */
    private static final double GRID = 0.01;

    private CurveTrust() {}

    /** The statements on a curve. */
    public static List<Assessment.Trust> of(ForceCurve curve) {
        if (curve.raising().size() < 2 || curve.lowering().size() < 2) {
            return List.of(
                    new Assessment.Trust("force curve", "no whole cycle could be run", false));
        }
        double cycle = cycleError(curve);
        double split = splitError(curve.raising());
        double grid = gridError(curve.raising());
        return List.of(
                new Assessment.Trust(
                        "energy balance of the force curve",
                        "up and down, weights and springs give back what they took within "
                                + Numerals.error(cycle, ENERGY)
                                + "; shares by cause add up within "
                                + Numerals.error(split, ENERGY),
                        cycle <= ENERGY && split <= ENERGY),
                new Assessment.Trust(
                        "convergence of the force curve",
                        "with half the heights the worst margin changes by "
                                + Numerals.error(grid, GRID),
                        grid <= GRID));
    }

    private static double conservative(List<CurvePoint> points) {
        return Cautions.work(points, Cause.DECK)
                + Cautions.work(points, Cause.ARMS)
                + Cautions.work(points, Cause.SPRINGS);
    }

    /** Work of weights and springs up against down, over the part that both ways cover [1]. */
    static double cycleError(ForceCurve curve) {
        double low = Math.max(curve.raising().get(0).height(), curve.lowering().get(0).height());
        double up = conservative(above(curve.raising(), low));
        double down = conservative(above(curve.lowering(), low));
        return Math.abs(up - down) / Math.max(Math.abs(up), Math.abs(down));
    }

    private static List<CurvePoint> above(List<CurvePoint> points, double low) {
        return points.stream().filter(p -> p.height() >= low - 1e-9).toList();
    }

    private static double splitError(List<CurvePoint> points) {
        double largest = 0;
        double scale = 0;
        for (CurvePoint p : points) {
            largest = Math.max(largest, Math.abs(p.motorShares().total() - p.motor().needed()));
            scale = Math.max(scale, Math.abs(p.motor().needed()));
        }
        return scale == 0 ? 0 : largest / scale;
    }

    /** Worst margin of the even points against that of all [1]. */
    private static double gridError(List<CurvePoint> points) {
        double all = Double.POSITIVE_INFINITY;
        double half = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            all = Math.min(all, points.get(i).margin());
            half = i % 2 == 0 ? Math.min(half, points.get(i).margin()) : half;
        }
        return Double.isInfinite(all) ? 0 : Math.abs(half - all) / all;
    }
}
