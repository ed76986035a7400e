// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.column.CriticalLoad;
import foldwright.elements.column.EndFixity;
import foldwright.elements.column.RoundColumn;
import foldwright.elements.column.Whirl;
import foldwright.machine.keys.Keys;
import java.util.ArrayList;
import java.util.List;

/** Screws as columns and as whirling shafts. */
public final class ColumnChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double GPA = 1e9;
    private static final double MPA = 1e6;
    private static final double PER_MINUTE = 30 / Math.PI;

    @Override
    public String title() {
        return "Columns and whirling shafts";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(sizing());
        values.addAll(longScrew());
        values.addAll(shortScrew());
        values.addAll(whirl());
        return values;
    }

    private static List<ProofValue> sizing() {
        double e = 207 * GPA;
        double yield = 500 * MPA;
        double euler = RoundColumn.diameterFor(88e3, 1.5, 1, e, yield);
        double johnson = RoundColumn.diameterFor(88e3, 0.375, 1, e, yield);
        double transition = RoundColumn.transition(1, e, yield);
        return new Comparison(
                        "round column for 22 kN, factor 4",
                        1e-3,
                        "Shigley 9th ed. Example 4-17 (answers from memory), Eqs. 4-43, 4-44, 4-51"
                                + " pp. 182-186")
                .value("1.5 m long, diameter", euler / MM, 37.4849, "mm")
                .printed("1.5 m long, diameter", euler / MM, 37.48, 0.01, "mm")
                .value("1.5 m long, slenderness", 4 * 1.5 / euler, 160.064, "1")
                .value("transition slenderness", transition, 90.3993, "1")
                .printed("transition slenderness", transition, 90.4, 0.1, "1")
                .value("0.375 m long, diameter", johnson / MM, 19.0199, "mm")
                .printed("0.375 m long, diameter", johnson / MM, 19.02, 0.01, "mm")
                .values();
    }

    private static List<ProofValue> longScrew() {
        RoundColumn screw = new RoundColumn(6.2 * MM, 250 * MM, 205 * GPA, 250 * MPA);
        Comparison all = screw("screw d3 6.2, 250 mm long");
        load(all, "fixed-free", screw, EndFixity.FIXED_FREE.theory(), 587.016, 63.61, true);
        load(all, "pinned-pinned", screw, EndFixity.PINNED_PINNED.theory(), 2348.07, 127.22, true);
        load(
                all,
                "fixed-pinned to design with",
                screw,
                EndFixity.FIXED_PINNED.recommended(),
                2817.68,
                139.37,
                true);
        load(
                all,
                "fixed-pinned in theory",
                screw,
                EndFixity.FIXED_PINNED.theory(),
                4515,
                179.92,
                false);
        load(
                all,
                "fixed-fixed in theory",
                screw,
                EndFixity.FIXED_FIXED.theory(),
                6031.34,
                254.45,
                false);
        return all.value("slenderness", screw.criticalLoad(1).slenderness(), 161.29, "1").values();
    }

    private static List<ProofValue> shortScrew() {
        RoundColumn screw = new RoundColumn(6.2 * MM, 100 * MM, 205 * GPA, 250 * MPA);
        Comparison all = screw("screw d3 6.2, 100 mm long");
        load(all, "fixed-free", screw, EndFixity.FIXED_FREE.theory(), 3668.85, 63.61, true);
        load(all, "pinned-pinned", screw, EndFixity.PINNED_PINNED.theory(), 6577.22, 127.22, false);
        load(
                all,
                "fixed-pinned to design with",
                screw,
                EndFixity.FIXED_PINNED.recommended(),
                6738.96,
                139.37,
                false);
        return all.value("slenderness", screw.criticalLoad(1).slenderness(), 64.52, "1").values();
    }

    private static Comparison screw(String name) {
        return new Comparison(
                name,
                1e-3,
                "own case recomputed independently; end constants of Shigley 9th ed. Table 4-2");
    }

    private static void load(
            Comparison all,
            String ends,
            RoundColumn screw,
            double endConstant,
            double force,
            double transition,
            boolean euler) {
        CriticalLoad load = screw.criticalLoad(endConstant);
        all.value(ends + ", critical load", load.force(), force, "N")
                .value(ends + ", transition", load.transition(), transition, "1")
                .fact(ends + ", Euler decides", load.curve() == CriticalLoad.Curve.EULER, euler);
    }

    private static List<ProofValue> whirl() {
        Whirl shaft = new Whirl(6.2 * MM, 300 * MM, 205 * GPA, 7850);
        double[][] published = {
            {2954.97, 2342.22, 2998.42},
            {8294.73, 6682.22, 8328.94},
            {12958, 10402.2, 12243.5},
            {18803.2, 15086.7, 18573.5}
        };
        Comparison all =
                new Comparison(
                        "whirling of d3 6.2, 300 mm",
                        1e-3,
                        "Euler-Bernoulli beam; constants of the two trade forms seen on public"
                                + " pages");
        for (EndFixity ends : EndFixity.values()) {
            double[] row = published[ends.ordinal()];
            String name = Keys.word(ends);
            double theory = shaft.criticalSpeed(ends) * PER_MINUTE;
            double metric = shaft.metricTradeSpeed(ends) * PER_MINUTE;
            double inch = shaft.inchTradeSpeed(ends) * PER_MINUTE;
            all.value(name + ", theory", theory, row[0], "1/min")
                    .value(name + ", metric trade form", metric, row[1], "1/min")
                    .value(name + ", inch trade form", inch, row[2], "1/min")
                    .within(
                            0.07,
                            name + ", metric form against 0.8 theory",
                            metric,
                            0.8 * theory,
                            "1/min")
                    .within(0.07, name + ", inch form against theory", inch, theory, "1/min");
        }
        return all.values();
    }
}
