// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.study.Series;
import foldwright.study.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of the travel with one verdict.
 *
 * @param verdict its verdict
 * @param from where it begins [unit of the axis]
 * @param to where it ends, above {@code from}
 */
public record Band(Verdict verdict, double from, double to) {

    /**
     * The stretches of a margin, its line straight between the points.
     *
     * @param along places, rising
     * @param margin margin at each place [1]
     * @param holdsFrom margin from which the verdict is "holds" [1]
     */
    public static List<Band> of(Series along, Series margin, double holdsFrom) {
        List<Band> out = new ArrayList<>();
        for (int i = 1; i < along.size(); i++) {
            double x0 = along.at(i - 1);
            double x1 = along.at(i);
            double m0 = margin.at(i - 1);
            double m1 = margin.at(i);
            if (Double.isFinite(m0) && Double.isFinite(m1)) {
                straight(out, new double[] {x0, x1, m0, m1}, holdsFrom);
            } else {
                double middle = 0.5 * (x0 + x1);
                append(out, Verdict.of(m0, holdsFrom), x0, middle);
                append(out, Verdict.of(m1, holdsFrom), middle, x1);
            }
        }
        return out;
    }

    /** Cuts one stretch {x0, x1, m0, m1} where its margin passes 1 and the rule. */
    private static void straight(List<Band> out, double[] s, double holdsFrom) {
        double begin = s[0];
        double m = s[2];
        double[] limits = s[3] > s[2] ? new double[] {1, holdsFrom} : new double[] {holdsFrom, 1};
        for (double limit : limits) {
            if ((limit - s[2]) * (limit - s[3]) < 0) {
                double x = s[0] + (limit - s[2]) / (s[3] - s[2]) * (s[1] - s[0]);
                append(out, Verdict.of(0.5 * (m + limit), holdsFrom), begin, x);
                begin = x;
                m = limit;
            }
        }
        append(out, Verdict.of(0.5 * (m + s[3]), holdsFrom), begin, s[1]);
    }

    private static void append(List<Band> out, Verdict verdict, double from, double to) {
        if (!(to > from)) {
            return;
        }
        int last = out.size() - 1;
        if (last >= 0 && out.get(last).verdict == verdict) {
            out.set(last, new Band(verdict, out.get(last).from, to));
        } else {
            out.add(new Band(verdict, from, to));
        }
    }
}
