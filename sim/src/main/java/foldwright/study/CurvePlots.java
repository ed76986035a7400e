// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.ForceCurve;
import foldwright.lift.Shares;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Plots over height from a force curve. */
public final class CurvePlots {
    private CurvePlots() {}

    /** Torque at the most loaded motor while rising, its limit, its causes; the way down dashed. */
    public static Optional<HeightPlot> motor(Machine machine, ForceCurve curve) {
        if (curve.raising().size() < 2) {
            return Optional.empty();
        }
        Series height = of(curve.raising(), CurvePoint::height);
        List<HeightPlot.Beside> beside = new ArrayList<>();
        if (curve.lowering().size() > 1) {
            Series down = of(curve.lowering(), CurvePoint::height);
            Series torque =
                    onto(height, down, of(curve.lowering(), p -> Math.abs(p.motor().needed())));
            beside.add(new HeightPlot.Beside("lowering", torque, Series.of()));
        }
        HeightPlot.Caption caption =
                new HeightPlot.Caption(
                        "Torque at " + SourceWords.of(machine).where(),
                        drive(machine),
                        Shown.NEWTON_METRE);
        return Optional.of(
                new HeightPlot(
                        caption,
                        height,
                        of(curve.raising(), p -> p.motor().needed()),
                        Optional.of(
                                new HeightPlot.Limit(
                                        SourceWords.of(machine).giver() + " gives",
                                        of(curve.raising(), p -> p.motor().available()),
                                        machine.limits().motorMargin())),
                        of(curve.raising(), CurvePoint::margin),
                        layers(curve.raising(), CurvePoint::motorShares),
                        beside));
    }

    /** Force at the slider ends in one direction, with its causes; no limit. */
    public static Optional<HeightPlot> foot(ForceCurve curve, Direction direction) {
        List<CurvePoint> points = curve.points(direction);
        if (points.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(
                new HeightPlot(
                        new HeightPlot.Caption(
                                "Force at the sliding feet", direction.label(), Shown.NEWTON),
                        of(points, CurvePoint::height),
                        of(points, CurvePoint::footForce),
                        Optional.empty(),
                        of(points, CurvePoint::margin),
                        layers(points, CurvePoint::footShares),
                        List.of()));
    }

    /** A series of one number of each point. */
    static Series of(List<CurvePoint> points, ToDoubleFunction<CurvePoint> number) {
        return Series.of(points.stream().mapToDouble(number).toArray());
    }

    private static Series onto(Series heights, Series from, Series values) {
        double[] out = new double[heights.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = values.over(from, heights.at(i));
        }
        return Series.of(out);
    }

    private static List<HeightPlot.Layer> layers(
            List<CurvePoint> points, Function<CurvePoint, Shares> shares) {
        List<HeightPlot.Layer> out = new ArrayList<>();
        double scale = 0;
        for (CurvePoint p : points) {
            scale = Math.max(scale, Math.abs(shares.apply(p).total()));
        }
        for (Cause c : Cause.values()) {
            Series s = of(points, p -> shares.apply(p).of(c));
            if (Math.max(s.max(), -s.min()) > 1e-4 * scale) {
                out.add(new HeightPlot.Layer(c, s));
            }
        }
        return out;
    }

    private static String drive(Machine machine) {
        int screws = machine.drive().lines().size();
        String count = screws == 1 ? "one screw " : screws + " screws ";
        String belt =
                machine.drive().transmission() instanceof BeltReduction b
                        ? ", belt " + Numerals.given(b.teeth().ratio()) + ":1"
                        : "";
        return count + machine.drive().screw().thread().name() + belt;
    }
}
