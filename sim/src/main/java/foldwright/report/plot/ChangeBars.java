// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Marks;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Remedy;
import foldwright.study.Verdict;
import java.util.List;

/** Worst margin as built and after each change, one bar each. */
public final class ChangeBars {
    /** Height of a row. */
    public static final double ROW = 26;

    private static final double FOOT = 24;

    private ChangeBars() {}

    /** Height of the whole figure for so many changes. */
    public static double height(int changes) {
        return (changes + 1) * ROW + FOOT;
    }

    /**
     * Draws the bars.
     *
     * @param frame the whole place; at least 320 wide
     * @param now the machine as it is, first row
     */
    public static void draw(Surface on, Box frame, Outcome now, List<Remedy> changes) {
        Type type = new Type(on.palette());
        double words = Math.min(0.5 * frame.width(), widest(type, changes) + 14);
        double numbers = 64;
        double most = Math.max(2, finite(now.margin()));
        for (Remedy r : changes) {
            most = Math.max(most, finite(r.outcome().margin()));
        }
        Scale x =
                new Scale(
                        0,
                        Math.min(MarginRibbon.CUT, most),
                        frame.x() + words,
                        frame.right() - numbers - 22);
        row(on, frame, x, 0, "as it is", now);
        for (int i = 0; i < changes.size(); i++) {
            row(on, frame, x, i + 1, changes.get(i).words(), changes.get(i).outcome());
        }
        rules(on, frame.y(), x, frame.y() + (changes.size() + 1) * ROW, now.holdsFrom());
    }

    private static double widest(Type type, List<Remedy> changes) {
        return changes.stream().mapToDouble(r -> type.label().width(r.words())).max().orElse(0);
    }

    private static double finite(double margin) {
        return Double.isFinite(margin) ? margin : 0;
    }

    private static void row(
            Surface on, Box frame, Scale x, int index, String words, Outcome outcome) {
        Type type = new Type(on.palette());
        double middle = frame.y() + (index + 0.5) * ROW;
        on.text(frame.x(), middle + 4.5, words, type.label());
        double end = x.at(x.held(Double.isNaN(outcome.margin()) ? 0 : outcome.margin()));
        Box bar = new Box(x.from(), middle - 6.5, Math.max(1, end - x.from()), 13);
        Verdict verdict = outcome.verdict();
        on.fill(Path.box(bar), new Fill.Texture(verdict));
        on.stroke(Path.box(bar), Pen.of(on.palette().fill(verdict), 1.1));
        Marks.draw(on, verdict, x.to() + 22, middle, 11);
        on.text(
                frame.right(),
                middle + 4.5,
                Numerals.margin(outcome.margin()),
                type.strong().aligned(Align.END));
    }

    private static void rules(Surface on, double top, Scale x, double bottom, double holdsFrom) {
        Type type = new Type(on.palette());
        Colour ink = on.palette().ground(Ground.INK);
        on.stroke(Path.line(x.at(1), top, x.at(1), bottom + 4), Pen.of(ink, 1.5));
        on.text(x.at(1) - 3, bottom + 18, "needed\u00a01×", type.tick().aligned(Align.END));
        if (holdsFrom > 1) {
            double at = x.at(holdsFrom);
            on.stroke(Path.line(at, top, at, bottom + 4), Pen.of(ink, 1.1).dashed(Dash.DOTTED));
            on.text(
                    Math.max(at, x.at(1) + 6),
                    bottom + 18,
                    "rule\u00a0" + Numerals.margin(holdsFrom),
                    type.tick());
        }
    }
}
