// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.report.draw.Face;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.theme.Palette;
import java.util.List;

/**
 * Small sheets laid over the big one: help, what a part carries, a question for a name, what cannot
 * be read.
 */
final class Sheets {
    private static final String[][] KEYS = {
        {"1 to 6", "open a question"},
        {"W", "go to its worst place"},
        {"up, down", "deck or path by 1 mm (Shift: 10)"},
        {"Space", "run, stand still"},
        {"Shift Space", "fold instead of unfold"},
        {"comma, point", "slower, faster (1/50 to 50×)"},
        {"J, K", "one row back, on"},
        {"M, Shift M", "next, last mark of the run"},
        {"A", "again and again, or once"},
        {"L", "next load shown as ink"},
        {"Page Down, Up", "next part by its load; before"},
        {"F, U", "force arrows; millimetre grid"},
        {"X, Shift X", "errors drawn larger, smaller"},
        {"Enter", "keep what is drawn as A"},
        {"G", "second machine away, back"},
        {"B", "second machine beside, over it"},
        {"Tab", "next thing to hold; arrows turn it"},
        {"Home, P", "home view, plan view"},
        {"T", "light, dark"},
        {"+ −", "larger, smaller text"},
        {"Ctrl Z, Ctrl Y", "undo, redo a number"},
        {"Ctrl S", "save as a new machine file"},
        {"O, D", "open a file, next demo"},
        {"N, R", "new from a seed; write the report"},
        {"? , Esc", "this help; close, stop"},
    };
    private static final String[] MOUSE = {
        "Drag the tab or a rule; click a curve to move the deck there.",
        "Drag the table to turn, with Shift to slide; the wheel zooms.",
        "Point at a part to read its load; a click holds the reading, Esc lets go.",
        "Click a mark on the scale to go to that moment.",
    };

    private Sheets() {}

    /** A box [px]. */
    record Frame(double x, double y, double w, double h) {}

    /** An empty sheet with its folded corner. */
    static void sheet(Canvas canvas, Layout at, Palette p, Frame f) {
        double fold = at.of(30, 19);
        for (int pass = 0; pass < 2; pass++) {
            canvas.path()
                    .moveTo(f.x, f.y)
                    .lineTo(f.x + f.w - fold, f.y)
                    .lineTo(f.x + f.w, f.y + fold);
            canvas.lineTo(f.x + f.w, f.y + f.h).lineTo(f.x, f.y + f.h).closePath();
            if (pass == 0) {
                canvas.fill(p.sheet);
            } else {
                canvas.stroke(p.rule, 1.2);
            }
        }
        canvas.path().moveTo(f.x + f.w - fold, f.y).lineTo(f.x + f.w - fold, f.y + fold);
        canvas.lineTo(f.x + f.w, f.y + fold).closePath().fill(p.recess);
    }

    /** All keys. */
    static Studio.Overlay help() {
        return (canvas, at, p) -> {
            canvas.nextLayer();
            Lettering key = new Lettering(Face.SANS_SEMIBOLD, at.type(16, 13), p.ink);
            Lettering text = new Lettering(Face.SANS, at.type(16, 13), p.ink2);
            double pitch = 1.9 * text.em();
            double w = at.of(860, 620);
            int rows = (KEYS.length + 1) / 2;
            double h = pitch * (rows + MOUSE.length + 3.2);
            Frame f = new Frame((at.width - w) / 2, (at.height - h) / 2, w, h);
            sheet(canvas, at, p, f);
            Lettering title = new Lettering(Face.SERIF_SEMIBOLD, at.type(24, 18), p.ink);
            double left = f.x + at.of(36, 26);
            double y = f.y + 1.9 * title.em();
            canvas.text(title, left, y, "Keys and mouse");
            for (int i = 0; i < KEYS.length; i++) {
                double x = left + (i / rows) * (w / 2 - at.of(20, 14));
                double row = y + pitch * (i % rows + 1.2);
                canvas.text(key, x, row, KEYS[i][0]);
                canvas.text(text, x + at.of(138, 100), row, KEYS[i][1]);
            }
            for (int i = 0; i < MOUSE.length; i++) {
                canvas.text(text.in(p.ink), left, y + pitch * (rows + 1.5 + i), MOUSE[i]);
            }
        };
    }

    /** A line to type into. */
    static Studio.Overlay prompt(String title, String typed, String hint) {
        return (canvas, at, p) -> {
            canvas.nextLayer();
            double w = Math.min(at.of(760, 560), at.width - 40);
            double h = at.of(170, 130);
            Frame f = new Frame((at.width - w) / 2, at.of(140, 96), w, h);
            sheet(canvas, at, p, f);
            double left = f.x + at.of(30, 22);
            Lettering head = new Lettering(Face.SERIF_SEMIBOLD, at.type(22, 17), p.ink);
            canvas.text(head, left, f.y + at.of(48, 36), title);
            Lettering text = new Lettering(Face.SANS, at.type(18, 14), p.ink);
            double room = w - at.of(60, 44);
            String shown = typed;
            while (canvas.width(text, shown) > room && shown.length() > 1) {
                shown = shown.substring(1);
            }
            double tw = canvas.text(text, left, f.y + at.of(96, 74), shown);
            canvas.path()
                    .rect(
                            left + tw + 2,
                            f.y + at.of(78, 60),
                            Math.max(1, at.of(2, 1.5)),
                            at.of(24, 18))
                    .fill(p.pine);
            canvas.level(left, left + room, f.y + at.of(106, 82), p.pine, 1.6);
            canvas.text(
                    new Lettering(Face.SANS, at.type(14, 13), p.ink2),
                    left,
                    f.y + at.of(136, 108),
                    hint);
        };
    }

    /** What cannot be read, all problems at once; the machine stays, pale. */
    static Studio.Overlay problems(String title, String message) {
        return (canvas, at, p) -> {
            canvas.nextLayer();
            Lettering head = new Lettering(Face.SERIF_SEMIBOLD, at.type(22, 17), p.ink);
            Lettering text = new Lettering(Face.SANS, at.type(15, 13), p.ink2);
            double w = Math.min(at.of(1000, 660), at.width - 60);
            double pitch = 1.45 * text.em();
            List<String> lines = new java.util.ArrayList<>();
            for (String problem : message.split("\n", -1)) {
                lines.addAll(
                        canvas.fonts()
                                .lines(
                                        text.typeface(),
                                        text.em(),
                                        problem,
                                        (float) (w - at.of(60, 44))));
            }
            int shown = Math.min(lines.size(), (int) ((at.height - at.of(300, 220)) / pitch));
            double h = at.of(112, 84) + pitch * (shown + 1);
            Frame f = new Frame(at.of(60, 40), at.of(120, 80), w, h);
            sheet(canvas, at, p, f);
            double left = f.x + at.of(30, 22);
            canvas.text(head, left, f.y + at.of(48, 36), title);
            for (int i = 0; i < shown; i++) {
                canvas.text(text, left, f.y + at.of(84, 62) + i * pitch, lines.get(i));
            }
            String last =
                    "The last good machine stays on the table; the file is read again when it is saved.";
            canvas.text(
                    text.in(p.ink),
                    left,
                    f.y + h - at.of(20, 14),
                    canvas.fonts()
                            .fit(text.typeface(), text.em(), last, (float) (w - at.of(50, 36))));
        };
    }

    /** A ring round the thing that the keyboard holds. */
    static Studio.Overlay ring(double x, double y, double w, double h) {
        return (canvas, at, p) -> {
            canvas.path().roundRect(x - 3, y - 3, w + 6, h + 6, 4);
            canvas.stroke(p.pine, 2);
        };
    }

    /** One after the other. */
    static Studio.Overlay both(Studio.Overlay first, Studio.Overlay second) {
        return (canvas, at, p) -> {
            first.draw(canvas, at, p);
            second.draw(canvas, at, p);
        };
    }
}
