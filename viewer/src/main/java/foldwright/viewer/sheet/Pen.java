// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.draw.Face;
import foldwright.report.draw.Marks;
import foldwright.study.Verdict;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.paint.CanvasSurface;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.paint.Texture;
import foldwright.viewer.theme.Palette;
import java.util.ArrayList;
import java.util.List;

/** What every part of the sheet draws with: canvas, places, colours, lettering. */
final class Pen {
    final Canvas canvas;
    final Layout at;
    final Palette palette;
    private final CanvasSurface surface;
    private final List<Lettering> known = new ArrayList<>();

    Pen(Canvas canvas, Layout layout, Palette palette) {
        this.canvas = canvas;
        this.at = layout;
        this.palette = palette;
        surface = new CanvasSurface(canvas, palette);
    }

    /** Whether it draws there, so, in these colours. */
    boolean is(Canvas onto, Layout layout, Palette colours) {
        return canvas == onto && at == layout && palette == colours;
    }

    /** A lettering, made once: some dozens serve all pictures. */
    private Lettering of(Face face, float em, int colour) {
        return of(face, em, colour, -1);
    }

    private Lettering of(Face face, float em, int colour, int halo) {
        for (int i = 0; i < known.size(); i++) {
            Lettering l = known.get(i);
            if (l.typeface() == face && l.em() == em && l.colour() == colour && l.halo() == halo) {
                return l;
            }
        }
        Lettering made = new Lettering(face, em, colour, halo);
        known.add(made);
        return made;
    }

    CanvasSurface surface() {
        return surface;
    }

    Lettering text(int colour) {
        return of(Face.SANS, at.type(15, 13), colour);
    }

    Lettering tick(int colour) {
        return of(Face.SANS, at.type(13.5, 13), colour);
    }

    Lettering strong(double large, double small, int colour) {
        return of(Face.SANS_SEMIBOLD, at.type(large, small), colour);
    }

    Lettering medium(double large, double small, int colour) {
        return of(Face.SANS_MEDIUM, at.type(large, small), colour);
    }

    Lettering italic(int colour) {
        return of(Face.SANS_ITALIC, at.type(15, 13), colour);
    }

    Lettering title(double large, double small) {
        return of(Face.SERIF_SEMIBOLD, at.type(large, small), palette.ink);
    }

    Lettering question(int colour) {
        return of(Face.SERIF_MEDIUM, at.type(20, 15), colour);
    }

    /** The same with a rim of paper. */
    Lettering over(Lettering look) {
        return of(look.typeface(), look.em(), look.colour(), palette.paper);
    }

    /** A caption. */
    Lettering caption(int colour) {
        return of(Face.SANS, at.type(14, 13), colour);
    }

    double line(double nominal) {
        return Math.max(0.75 * nominal, nominal * at.u);
    }

    void mark(Verdict verdict, double x, double y, double size) {
        Marks.draw(surface, verdict, x, y, size);
    }

    /** Fills the current path as an area of a verdict. */
    void area(Verdict verdict) {
        int colour = palette.fill(verdict);
        canvas.fill(colour, palette.tint(verdict));
        if (verdict == Verdict.FAILS) {
            canvas.fill(Texture.STRIPES, colour);
        } else if (verdict == Verdict.TIGHT) {
            canvas.fill(Texture.DOTS, colour);
        }
    }

    /** Whole clauses that fit, the last ones left out; cut where even the first is too long. */
    String clauses(Lettering look, String text, double room) {
        String kept = text;
        int comma = kept.lastIndexOf(", ");
        while (comma > 0 && canvas.width(look, kept) > room) {
            kept = kept.substring(0, comma);
            comma = kept.lastIndexOf(", ");
        }
        return fit(look, kept, room);
    }

    /** Whole clauses that fit; nothing where even the first is too long. */
    String whole(Lettering look, String text, double room) {
        String kept = clauses(look, text, room);
        return canvas.width(look, kept) <= room && text.startsWith(kept) ? kept : "";
    }

    /** The text, cut to fit. */
    String fit(Lettering look, String text, double room) {
        return canvas.fonts().fit(look.typeface(), look.em(), text, (float) room);
    }
}
