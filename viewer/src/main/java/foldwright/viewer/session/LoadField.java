// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.viewer.sheet.SheetModel;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One load of every part over the height while the deck rises [SI]. A field has a sign where its
 * values pass zero; its scale is then even about zero.
 */
public final class LoadField {
    /** Below this share of the largest a value of the other sign is rounding. */
    private static final double ROUNDING = 1e-3;

    /** Loads of both sides that differ by less are one load [1]. */
    static final double SAME = 1e-6;

    /** Share of the scale's end below which a load is not told [1]. */
    private static final double TELLABLE = 1e-3;

    /** Shares of a limit above this are told as above it [1]. */
    static final double MOST_USED = 2;

    /** Of mirror images that on the side towards the user first. */
    private static final Comparator<String> SEEN_FIRST =
            Comparator.<String, Boolean>comparing(n -> !n.startsWith("front"))
                    .thenComparing(Comparator.naturalOrder());

    private final Overlay overlay;
    private final String title;
    private final Series heights;
    private final Map<String, Series> values;

    /** Names in their order, so that an answer among equals does not depend on a map's. */
    private final String[] names;

    private final Series[] loads;
    private final double end;
    private final boolean signed;
    private double told = Double.NaN;
    private String toldWords;

    /**
     * @param heights rising [m]
     * @param values by part, as many as heights; not a number where none is known
     * @param least the scale ends at this or a round number above the largest value [SI]
     */
    LoadField(Overlay overlay, Series heights, Map<String, Series> values, double least) {
        this.overlay = overlay;
        title = overlay.words() + ", " + overlay.unit().symbol();
        this.heights = heights;
        this.values = Map.copyOf(values);
        names = values.keySet().stream().sorted(SEEN_FIRST).toArray(String[]::new);
        loads = Stream.of(names).map(values::get).toArray(Series[]::new);
        double plus = 0;
        double minus = 0;
        for (Series s : values.values()) {
            plus = Math.max(plus, s.max());
            minus = Math.max(minus, -s.min());
        }
        boolean both = minus > ROUNDING * plus && minus > 0;
        // A load of the gantry changes its sign with the way it starts.
        signed = overlay.ends().isPresent() && (both || overlay.ofGantry());
        double most = Math.max(least, Math.max(plus, signed ? minus : 0));
        end = overlay.unit().toSi(rounded(overlay.unit().fromSi(most)));
    }

    /** The same values on the scale of two machines. */
    private LoadField(LoadField own, LoadField other) {
        overlay = own.overlay;
        title = own.title;
        heights = own.heights;
        values = own.values;
        names = own.names;
        loads = own.loads;
        signed = own.signed || other.signed;
        end = Math.max(own.end, other.end);
    }

    /** These values on a scale that also holds those of another machine. */
    LoadField sharing(LoadField other) {
        boolean same = signed == (signed || other.signed) && end >= other.end;
        return same ? this : new LoadField(this, other);
    }

    /** Loads that do not depend on the height. */
    static Optional<LoadField> steady(Overlay overlay, Map<String, Series> values, double least) {
        return values.isEmpty()
                ? Optional.empty()
                : Optional.of(new LoadField(overlay, Series.of(0), values, least));
    }

    /** The loads of a curve; empty when the curve has no points or says nothing of this load. */
    public static Optional<LoadField> of(Machine machine, ForceCurve curve, Overlay overlay) {
        return new CurveFields(machine, curve, Map.of()).field(overlay);
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

    public Overlay overlay() {
        return overlay;
    }

    /** What is shown and its unit. */
    String title() {
        return title;
    }

    /** A value in words, with its unit; the last ones are kept, legend and label ask for them. */
    String words(double value) {
        if (value != told) {
            boolean over = overlay == Overlay.USED && value >= MOST_USED * (1 - SAME);
            String words = Numerals.with(value, overlay.unit());
            toldWords = over ? "over " + words : words;
            told = value;
        }
        return toldWords;
    }

    /** End of the scale [SI]; it begins at 0, or at the same below zero where it has a sign. */
    public double end() {
        return end;
    }

    /** Words for both ends where the load has a sign on this machine. */
    public Optional<SheetModel.Ends> ends() {
        return signed ? overlay.ends() : Optional.empty();
    }

    /** Place of a value on the ink, 0 to 1. */
    public double share(double value) {
        double v = signed ? 0.5 + 0.5 * value / end : Math.abs(value) / end;
        return Math.max(0, Math.min(1, v));
    }

    /** Whether the scale runs to both sides of zero. */
    public boolean signed() {
        return signed;
    }

    /** The load of a part at a height [SI]; not a number where none is known. */
    public double at(String part, double height) {
        Series s = values.get(part);
        return s == null ? Double.NaN : s.over(heights, height);
    }

    /** The size of a load in steps so wide that both sides of a machine fall on one. */
    double steps(String part, double height) {
        return Math.rint(Math.abs(at(part, height)) / (1e-5 * end));
    }

    /** The part with the largest load at a height, whatever its sign. */
    public Optional<String> darkest(double height) {
        return largest(height, 0);
    }

    /**
     * The part with the largest load at a height; none where all are too small to be seen.
     *
     * @param sign +1 or -1 for loads of that sign alone, 0 for both
     */
    Optional<String> largest(double height, int sign) {
        String best = null;
        double most = TELLABLE * end;
        for (int i = 0; i < names.length; i++) {
            double v = loads[i].over(heights, height);
            double size = sign == 0 ? Math.abs(v) : sign * v;
            if (size > most * (1 + SAME)) {
                most = size;
                best = names[i];
            }
        }
        return Optional.ofNullable(best);
    }
}
