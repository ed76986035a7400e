// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.machine.Machine;
import foldwright.machine.file.CrossChecks;
import foldwright.viewer.sheet.SheetModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The rules of a machine file: its dials with the values tried instead of the file's, and the hills
 * over them.
 */
public final class RuleSet {
    /** Points of a hill. */
    public static final int HILL_POINTS = 9;

    private Made last;

    /** What the rules were made of last. */
    private record Made(
            Machine file,
            List<Dial> dials,
            Map<String, Double> tried,
            List<SheetModel.Hill> hills,
            List<SheetModel.Rule> rules) {
        boolean of(
                Machine machine,
                List<Dial> numbers,
                Map<String, Double> values,
                List<SheetModel.Hill> over) {
            return file == machine && dials == numbers && hills == over && tried.equals(values);
        }
    }

    /** {@link #rules}, made anew only when something differs: the sheet asks in every picture. */
    public List<SheetModel.Rule> now(
            Machine file,
            List<Dial> dials,
            Map<String, Double> tried,
            List<SheetModel.Hill> hills) {
        if (last == null || !last.of(file, dials, tried, hills)) {
            List<SheetModel.Rule> rules = List.copyOf(rules(file, dials, tried, hills));
            last = new Made(file, dials, Map.copyOf(tried), hills, rules);
        }
        return last.rules;
    }

    /**
     * Rules for the sheet.
     *
     * @param tried values tried instead of the file's, by key path [SI]
     * @param hills as many as are known, in the order of the dials
     */
    public static List<SheetModel.Rule> rules(
            Machine file,
            List<Dial> dials,
            Map<String, Double> tried,
            List<SheetModel.Hill> hills) {
        List<SheetModel.Rule> out = new ArrayList<>();
        for (int i = 0; i < dials.size(); i++) {
            Dial d = dials.get(i);
            double own = d.value().applyAsDouble(file);
            double now = tried.getOrDefault(d.path(), own);
            out.add(
                    new SheetModel.Rule(
                            d.name(),
                            d.text(now),
                            d.bare(d.low()),
                            d.text(d.high()),
                            d.share(now),
                            tried.containsKey(d.path())
                                    ? Optional.of(d.share(own))
                                    : Optional.empty(),
                            "file " + d.bare(own),
                            i < hills.size() ? hills.get(i) : SheetModel.Hill.NONE));
        }
        return out;
    }

    /**
     * Worst margins at even steps along a dial, each on the machine with only that number changed.
     *
     * @param margin of a machine [1]
     * @param holdsFrom margin from which it holds [1]
     */
    public static SheetModel.Hill hill(
            ToDoubleFunction<Machine> margin, Machine file, Dial dial, double holdsFrom) {
        List<Double> margins = new ArrayList<>();
        for (int i = 0; i < HILL_POINTS; i++) {
            margins.add(margin(margin, file, dial, i));
        }
        return new SheetModel.Hill(margins, holdsFrom);
    }

    /** One point of a hill, from 0 at the dial's low end; not a number where no machine can be. */
    public static double margin(
            ToDoubleFunction<Machine> margin, Machine file, Dial dial, int point) {
        double si = dial.low() + (dial.high() - dial.low()) * point / (HILL_POINTS - 1);
        try {
            Machine variant = dial.on(file, si);
            return CrossChecks.agree(variant) ? margin.applyAsDouble(variant) : Double.NaN;
        } catch (RuntimeException e) {
            // A machine that cannot be built with this number has no margin there.
            return Double.NaN;
        }
    }
}
