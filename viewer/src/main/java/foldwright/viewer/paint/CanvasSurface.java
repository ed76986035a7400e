// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.report.draw.TextStyle;
import foldwright.study.Verdict;
import foldwright.viewer.theme.Palette;
import java.util.List;

/** The canvas as the surface that report plots and marks draw on, so that both look alike. */
public final class CanvasSurface implements Surface {
    private static final double[] SOLID = {};

    private final Canvas canvas;
    private final Palette palette;

    public CanvasSurface(Canvas canvas, Palette palette) {
        this.canvas = canvas;
        this.palette = palette;
    }

    @Override
    public foldwright.report.draw.Palette palette() {
        return palette.roles;
    }

    private void trace(Path path, double[] dash) {
        canvas.path();
        for (int c = 0; c < path.contours(); c++) {
            int from = path.from(c);
            int to = path.to(c);
            if (dash.length > 0) {
                dashed(path, c, dash);
                continue;
            }
            for (int i = from; i < to; i++) {
                if (i == from) {
                    canvas.moveTo(path.x(i), path.y(i));
                } else {
                    canvas.lineTo(path.x(i), path.y(i));
                }
            }
            if (path.isClosed(c)) {
                canvas.closePath();
            }
        }
    }

    private void dashed(Path path, int contour, double[] dash) {
        int from = path.from(contour);
        int n = path.to(contour) - from;
        int count = path.isClosed(contour) ? n + 1 : n;
        float[] xs = new float[count];
        float[] ys = new float[count];
        for (int i = 0; i < count; i++) {
            xs[i] = (float) path.x(from + i % n);
            ys[i] = (float) path.y(from + i % n);
        }
        float[] pattern = new float[dash.length];
        for (int i = 0; i < dash.length; i++) {
            pattern[i] = (float) dash[i];
        }
        canvas.dashes(xs, ys, count, pattern);
    }

    private static double[] dashes(Pen pen) {
        List<Double> lengths = pen.dash().lengths();
        return lengths.isEmpty()
                ? SOLID
                : lengths.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public void stroke(Path path, Pen pen) {
        trace(path, dashes(pen));
        canvas.strokeRound(Palette.rgb(pen.colour()), pen.width());
    }

    @Override
    public void fill(Path path, Fill fill) {
        if (fill instanceof Fill.Flat flat) {
            trace(path, SOLID);
            canvas.fill(Palette.rgb(flat.colour()), flat.opacity());
        } else if (fill instanceof Fill.Texture texture) {
            trace(path, SOLID);
            verdict(texture.verdict());
        } else if (fill instanceof Fill.Stripes stripes) {
            trace(path, SOLID);
            canvas.fill(foldwright.viewer.paint.Texture.STRIPES, Palette.rgb(stripes.colour()));
        } else if (fill instanceof Fill.Ramp ramp) {
            ramp(path, ramp);
        }
    }

    /** Fills the current path as an area of this verdict. */
    private void verdict(Verdict verdict) {
        int colour = palette.fill(verdict);
        canvas.fill(colour, palette.tint(verdict));
        if (verdict == Verdict.FAILS) {
            canvas.fill(foldwright.viewer.paint.Texture.STRIPES, colour);
        } else if (verdict == Verdict.TIGHT) {
            canvas.fill(foldwright.viewer.paint.Texture.DOTS, colour);
        }
    }

    private void ramp(Path path, Fill.Ramp ramp) {
        int steps = 32;
        double width = (ramp.to() - ramp.from()) / steps;
        for (int i = 0; i < steps; i++) {
            double part = (i + 0.5) / steps * (ramp.stops().size() - 1);
            int low = Math.min(ramp.stops().size() - 2, (int) part);
            Colour c = ramp.stops().get(low).towards(ramp.stops().get(low + 1), part - low);
            canvas.clip(ramp.from() + i * width, 0, width + 0.6, canvas.height());
            trace(path, SOLID);
            canvas.fill(Palette.rgb(c));
        }
        canvas.unclip();
    }

    @Override
    public void strokeCircle(double x, double y, double radius, Pen pen) {
        double[] dash = dashes(pen);
        if (dash.length == 0) {
            canvas.path().disc(x, y, radius).stroke(Palette.rgb(pen.colour()), pen.width());
            return;
        }
        int n = 49;
        float[] xs = new float[n];
        float[] ys = new float[n];
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * i / (n - 1);
            xs[i] = (float) (x + radius * Math.cos(a));
            ys[i] = (float) (y + radius * Math.sin(a));
        }
        canvas.path().dashes(xs, ys, n, (float) dash[0], (float) dash[1]);
        canvas.strokeRound(Palette.rgb(pen.colour()), pen.width());
    }

    @Override
    public void fillCircle(double x, double y, double radius, Fill fill) {
        canvas.path().disc(x, y, radius);
        if (fill instanceof Fill.Flat flat) {
            canvas.fill(Palette.rgb(flat.colour()), flat.opacity());
        } else if (fill instanceof Fill.Texture texture) {
            verdict(texture.verdict());
        } else {
            canvas.fill(palette.ink);
        }
    }

    @Override
    public void text(double x, double y, String text, TextStyle style) {
        int halo = style.halo().map(Palette::rgb).orElse(-1);
        Lettering look =
                new Lettering(
                        style.face(), (float) style.size(), Palette.rgb(style.colour()), halo);
        Align align =
                switch (style.align()) {
                    case START -> Align.LEFT;
                    case MIDDLE -> Align.CENTRE;
                    case END -> Align.RIGHT;
                };
        canvas.text(look, x, y, text, align);
    }

    @Override
    public void clip(Box box) {
        canvas.clip(box.x(), box.y(), box.width(), box.height());
    }

    @Override
    public void unclip() {
        canvas.unclip();
    }
}
