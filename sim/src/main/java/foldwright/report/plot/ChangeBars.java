// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Face;
import foldwright.report.draw.Fill;
import foldwright.report.draw.FontMetrics;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Marks;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Remedy;
import foldwright.study.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Worst margin as built and after each change, one bar each. */
public final class ChangeBars {
    private static final double ROW = 26;
    private static final double LINE = 15;
    private static final double FOOT = 24;

    private ChangeBars() {}

    /** Height of the whole figure at a width. */
    public static double height(double width, List<Remedy> changes) {
        double room = 0.5 * width - 14;
        double rows = ROW;
        for (Remedy r : changes) {
            rows += rowHeight(lines(r.words(), room));
        }
        return rows + FOOT;
    }

    private static double rowHeight(List<String> lines) {
        return ROW + (lines.size() - 1) * LINE;
    }

    /** The words in as many lines as they need. */
    private static List<String> lines(String words, double room) {
        FontMetrics metrics = FontMetrics.of(Face.SANS);
        List<String> out = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.width(longer, 13) > room) {
                out.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        out.add(line);
        return out;
    }

    /**
     * Draws the bars.
     *
     * @param frame the whole place; at least 320 wide
     * @param now the machine as it is, first row
     */
    public static void draw(Surface on, Box frame, Outcome now, List<Remedy> changes) {
        double room = 0.5 * frame.width();
        double numbers = 64;
        double most = Math.max(2, finite(now.margin()));
        for (Remedy r : changes) {
            most = Math.max(most, finite(r.outcome().margin()));
        }
        Scale x =
                new Scale(
                        0,
                        Math.min(MarginRibbon.CUT, most),
                        frame.x() + room,
                        frame.right() - numbers - 22);
        double y = frame.y();
        row(on, frame, x, y, List.of("as it is"), now);
        y += ROW;
        for (Remedy r : changes) {
            List<String> words = lines(r.words(), room - 14);
            row(on, frame, x, y, words, r.outcome());
            y += rowHeight(words);
        }
        rules(on, frame.y(), x, y, now.holdsFrom());
    }

    private static double finite(double margin) {
        return Double.isFinite(margin) ? margin : 0;
    }

    private static void row(
            Surface on, Box frame, Scale x, double top, List<String> words, Outcome outcome) {
        Type type = new Type(on.palette());
        double middle = top + 0.5 * rowHeight(words);
        double base = middle + 4.5 - 0.5 * (words.size() - 1) * LINE;
        for (int i = 0; i < words.size(); i++) {
            on.text(frame.x(), base + i * LINE, words.get(i), type.label());
        }
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
                    "rule\u00a0" + Numerals.given(holdsFrom) + "×",
                    type.tick());
        }
    }
}
