// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import java.util.List;

/**
 * How far a force curve can be trusted: the shares must add up to the whole at every point, and the
 * work of the deck's weight over the foot travel must be its weight times the height gained.
 */
public final class CurveTrust {
    /** Bound of both errors, that of the energy ledger of runs in time [1]. */
    private static final double BOUND = 1e-3;

    private CurveTrust() {}

    /** The statements, for a curve computed on a grid fine enough to be integrated. */
    public static List<Assessment.Trust> of(Machine machine, ForceCurve curve) {
        if (curve.raising().size() < 2) {
            return List.of(new Assessment.Trust("force curve", "no height could be passed", false));
        }
        double energy = energyError(machine, curve.raising());
        double split = splitError(curve.raising());
        return List.of(
                new Assessment.Trust(
                        "force curve",
                        "work against the deck's weight differs from weight times height by "
                                + percent(energy),
                        energy <= BOUND),
                new Assessment.Trust(
                        "force curve",
                        "shares by cause add up to the whole within " + percent(split),
                        split <= BOUND));
    }

    private static String percent(double error) {
        return error < 1e-8 ? "0.000001\u00a0%" : Numerals.with(error, Shown.PERCENT);
    }

    /** Relative error of the integral of the deck's share [1]. */
    public static double energyError(Machine machine, List<CurvePoint> up) {
        double work = Cautions.work(up, Cause.DECK);
        double gained = up.get(up.size() - 1).height() - up.get(0).height();
        double exact = Bench.deckWeight(machine) * gained;
        return Math.abs(work - exact) / exact;
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
}
