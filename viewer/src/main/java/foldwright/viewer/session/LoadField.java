// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.study.Series;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** One load of every part over the height while the deck rises [SI]: sizes, without sign. */
public final class LoadField {
    private final Overlay overlay;
    private final Series heights;
    private final Map<String, Series> values;
    private final double end;

    private LoadField(Overlay overlay, Series heights, Map<String, Series> values) {
        this.overlay = overlay;
        this.heights = heights;
        this.values = values;
        double most = values.values().stream().mapToDouble(Series::max).max().orElse(0);
        end = overlay.unit().toSi(rounded(overlay.unit().fromSi(most)));
    }

    /** A round number not below the largest, so that ink keeps its meaning while the deck moves. */
    private static double rounded(double most) {
        if (!(most > 0)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        for (double s : new double[] {1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10}) {
            if (s * power >= most * (1 - 1e-9)) {
                return s * power;
            }
        }
        return 10 * power;
    }

    /** The loads of a curve; empty when the curve has no points or says nothing of this load. */
    public static Optional<LoadField> of(ForceCurve curve, Overlay overlay) {
        List<CurvePoint> points = curve.raising();
        if (points.size() < 2 || overlay == Overlay.NONE) {
            return Optional.empty();
        }
        Map<String, Series> out = new HashMap<>();
        switch (overlay) {
            case ARM_BENDING -> arms(points, a -> Math.abs(a.bending()), out);
            case ARM_AXIAL -> arms(points, a -> Math.abs(a.axial()), out);
            case ARM_STRESS -> arms(points, a -> Math.abs(a.stress()), out);
            case PIN_FORCE -> pins(points, foldwright.lift.PinLoad::force, out);
            case PIN_PRESSURE -> pins(points, foldwright.lift.PinLoad::pressure, out);
            case SCREW_FORCE -> out.put("screw", series(points, p -> Math.abs(p.screw().force())));
            default -> {}
        }
        if (out.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LoadField(overlay, series(points, CurvePoint::height), out));
    }

    private static Series series(List<CurvePoint> points, ToDoubleFunction<CurvePoint> number) {
        return Series.of(points.stream().mapToDouble(number).toArray());
    }

    private static void arms(
            List<CurvePoint> points,
            ToDoubleFunction<foldwright.lift.ArmLoad> number,
            Map<String, Series> out) {
        List<String> names = new ArrayList<>();
        points.get(0).parts().arms().forEach(a -> names.add(a.arm()));
        for (int k = 0; k < names.size(); k++) {
            int index = k;
            out.put(
                    names.get(k),
                    series(
                            points,
                            p ->
                                    index < p.parts().arms().size()
                                            ? number.applyAsDouble(p.parts().arms().get(index))
                                            : Double.NaN));
        }
    }

    private static void pins(
            List<CurvePoint> points,
            ToDoubleFunction<foldwright.lift.PinLoad> number,
            Map<String, Series> out) {
        List<String> names = new ArrayList<>();
        points.get(0).parts().pins().forEach(a -> names.add(a.pin()));
        for (int k = 0; k < names.size(); k++) {
            int index = k;
            out.put(
                    names.get(k),
                    series(
                            points,
                            p ->
                                    index < p.parts().pins().size()
                                            ? number.applyAsDouble(p.parts().pins().get(index))
                                            : Double.NaN));
        }
    }

    public Overlay overlay() {
        return overlay;
    }

    /** End of the scale [SI]. */
    public double end() {
        return end;
    }

    /** The load of a part at a height [SI]; not a number where none is known. */
    public double at(String part, double height) {
        Series s = values.get(part.startsWith("screw ") ? "screw" : part);
        return s == null ? Double.NaN : s.over(heights, height);
    }

    /** The part with the largest load at a height. */
    public Optional<String> darkest(double height) {
        String best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Map.Entry<String, Series> e : values.entrySet()) {
            double v = e.getValue().over(heights, height);
            // Names decide between equals, so that the answer does not depend on the order of a
            // map.
            if (v > most * (1 + 1e-9)
                    || v >= most && (best == null || e.getKey().compareTo(best) < 0)) {
                most = v;
                best = e.getKey();
            }
        }
        return Optional.ofNullable(best);
    }
}
