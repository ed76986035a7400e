// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

import static org.lwjgl.nanovg.NanoVG.*;
import static org.lwjgl.opengl.GL33C.*;

import foldwright.viewer.gl.Target;
import foldwright.viewer.text.Fonts;
import foldwright.viewer.text.TextBox;
import foldwright.viewer.text.TextPainter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lwjgl.nanovg.NVGColor;
import org.lwjgl.nanovg.NVGPaint;
import org.lwjgl.nanovg.NanoVGGL3;

/**
 * Draws flat shapes and text into a target. Shapes go through NanoVG (without stencil strokes,
 * which cost thirty times as much on a software renderer), text through {@link TextPainter}. Within
 * one layer all shapes lie under all text.
 */
public final class Canvas implements AutoCloseable {
    private final long vg;
    private final TextPainter painter = new TextPainter();
    private final Fonts fonts = Fonts.standard();
    private final NVGColor colour = NVGColor.calloc();
    private final NVGPaint paint = NVGPaint.calloc();
    private final Map<Long, Integer> tiles = new HashMap<>();
    private final TextRecord boxes = new TextRecord();
    private Target target;
    private float u = 1;
    private int layer;

    public Canvas() {
        vg = NanoVGGL3.nvgCreate(NanoVGGL3.NVG_ANTIALIAS);
        if (vg == 0) {
            throw new IllegalStateException("the shape renderer could not be started");
        }
    }

    /**
     * Begins a sheet.
     *
     * @param into a {@link Target.Form#COLOUR} target
     * @param unit pixels a unit of the layout
     */
    public void begin(Target into, double unit) {
        target = into;
        u = (float) unit;
        layer = 0;
        boxes.clear();
        open();
    }

    private void open() {
        target.bind();
        glClear(GL_STENCIL_BUFFER_BIT);
        nvgBeginFrame(vg, target.width, target.height, 1);
    }

    /** Draws what was given so far; what follows may cover it. */
    public void nextLayer() {
        finish();
        layer++;
        open();
    }

    /** Draws what was given so far, in the same layer. */
    public void flush() {
        finish();
        open();
    }

    /** Goes on drawing into the sheet after something else was drawn elsewhere. */
    public void resume() {
        target.bind();
    }

    /** How many texts were drawn since {@link #begin}. */
    public int texts() {
        return boxes.count();
    }

    /** Records texts that are on the sheet already. */
    public void again(List<TextBox> drawn) {
        for (int i = 0; i < drawn.size(); i++) {
            boxes.add(drawn.get(i));
        }
    }

    /** Draws everything. */
    public void finish() {
        nvgEndFrame(vg);
        painter.draw(target.width, target.height);
    }

    /** Every text drawn since {@link #begin}. */
    public List<TextBox> boxes() {
        return boxes.since(0);
    }

    /** Texts drawn since there were so many. */
    public List<TextBox> boxesSince(int count) {
        return boxes.since(count);
    }

    public float width() {
        return target.width;
    }

    public float height() {
        return target.height;
    }

    /** Pixels a unit of the layout. */
    public float u() {
        return u;
    }

    /** Line width at this scale: never thinner than three quarters of its nominal width [px]. */
    public float stroke(double nominal) {
        return (float) Math.max(0.75 * nominal, nominal * u);
    }

    // ---- text

    /** Width of a line [px]. */
    public float width(Lettering look, CharSequence text) {
        return fonts.width(look.typeface(), look.em(), text);
    }

    public Fonts fonts() {
        return fonts;
    }

    /** Whether no text of this layer has been drawn into a box [px]. */
    public boolean free(double x, double y, double w, double h) {
        return boxes.free(layer, (float) x, (float) y, (float) w, (float) h);
    }

    /** Draws a line of text and records its box; returns its width [px]. */
    public float text(Lettering look, double x, double baseline, CharSequence text, Align align) {
        float w = width(look, text);
        float left = (float) x - align.share * w;
        if (look.halo() >= 0) {
            float rim = Math.max(1.5f, 2 * u);
            painter.add(
                    text,
                    look.typeface(),
                    look.em(),
                    left,
                    (float) baseline,
                    look.halo() << 8 | 0xF2,
                    rim);
        }
        painter.add(
                text,
                look.typeface(),
                look.em(),
                left,
                (float) baseline,
                look.colour() << 8 | 0xFF,
                0);
        float floor = Math.round((float) baseline);
        boxes.add(text.toString(), layer, left, floor - 0.70f * look.em(), w, 0.90f * look.em());
        return w;
    }

    /** Draws a line of text from its left end; returns its width [px]. */
    public float text(Lettering look, double x, double baseline, CharSequence text) {
        return text(look, x, baseline, text, Align.LEFT);
    }

    // ---- shapes

    private NVGColor rgba(int rgb, double alpha) {
        return nvgRGBA(
                (byte) (rgb >> 16),
                (byte) (rgb >> 8),
                (byte) rgb,
                (byte) Math.round(255 * alpha),
                colour);
    }

    /** Starts a path. */
    public Canvas path() {
        nvgBeginPath(vg);
        return this;
    }

    public Canvas moveTo(double x, double y) {
        nvgMoveTo(vg, (float) x, (float) y);
        return this;
    }

    public Canvas lineTo(double x, double y) {
        nvgLineTo(vg, (float) x, (float) y);
        return this;
    }

    public Canvas closePath() {
        nvgClosePath(vg);
        return this;
    }

    public Canvas rect(double x, double y, double w, double h) {
        nvgRect(vg, (float) x, (float) y, (float) w, (float) h);
        return this;
    }

    public Canvas roundRect(double x, double y, double w, double h, double radius) {
        nvgRoundedRect(vg, (float) x, (float) y, (float) w, (float) h, (float) radius);
        return this;
    }

    public Canvas disc(double x, double y, double radius) {
        nvgCircle(vg, (float) x, (float) y, (float) radius);
        return this;
    }

    /** An arc from angle to angle [rad], clockwise on the screen. */
    public Canvas arc(double x, double y, double radius, double from, double to) {
        nvgArc(vg, (float) x, (float) y, (float) radius, (float) from, (float) to, NVG_CW);
        return this;
    }

    /** A polyline through {@code n} points. */
    public Canvas through(float[] xs, float[] ys, int n) {
        for (int i = 0; i < n; i++) {
            if (i == 0) {
                nvgMoveTo(vg, xs[i], ys[i]);
            } else {
                nvgLineTo(vg, xs[i], ys[i]);
            }
        }
        return this;
    }

    /**
     * Dashes along a polyline; the pattern (drawn, bare, drawn, bare... [px at u = 1]) runs on
     * round corners.
     */
    public Canvas dashes(float[] xs, float[] ys, int n, float... pattern) {
        float scale = Math.max(0.8f, u);
        int piece = 0;
        float left = pattern[0] * scale;
        boolean down = true;
        nvgMoveTo(vg, xs[0], ys[0]);
        for (int i = 1; i < n; i++) {
            float x = xs[i - 1];
            float y = ys[i - 1];
            float len = (float) Math.hypot(xs[i] - x, ys[i] - y);
            float gone = 0;
            while (len - gone > left) {
                gone += left;
                float px = x + (xs[i] - x) * gone / len;
                float py = y + (ys[i] - y) * gone / len;
                if (down) {
                    nvgLineTo(vg, px, py);
                } else {
                    nvgMoveTo(vg, px, py);
                }
                down = !down;
                piece = (piece + 1) % pattern.length;
                left = pattern[piece] * scale;
            }
            left -= len - gone;
            if (down) {
                nvgLineTo(vg, xs[i], ys[i]);
            }
        }
        return this;
    }

    public void fill(int rgb) {
        fill(rgb, 1);
    }

    public void fill(int rgb, double alpha) {
        nvgFillColor(vg, rgba(rgb, alpha));
        nvgFill(vg);
    }

    /** Fills with a repeated tile fixed to the screen. */
    public void fill(Texture texture, int rgb) {
        int size = Math.max(6, Math.round(6 * u));
        long key = ((long) texture.ordinal() << 40) | ((long) size << 24) | rgb;
        Integer known = tiles.get(key);
        if (known == null) {
            known =
                    nvgCreateImageRGBA(
                            vg,
                            size,
                            size,
                            NVG_IMAGE_REPEATX | NVG_IMAGE_REPEATY | NVG_IMAGE_NEAREST,
                            Tiles.draw(texture, size, rgb));
            tiles.put(key, known);
        }
        nvgImagePattern(vg, 0, 0, size, size, 0, known, 1, paint);
        nvgFillPaint(vg, paint);
        nvgFill(vg);
    }

    /** Strokes the path with a line this wide [px]. */
    public void stroke(int rgb, double width) {
        stroke(rgb, width, 1);
    }

    public void stroke(int rgb, double width, double alpha) {
        nvgStrokeColor(vg, rgba(rgb, alpha));
        nvgStrokeWidth(vg, (float) width);
        nvgLineCap(vg, NVG_BUTT);
        nvgLineJoin(vg, NVG_MITER);
        nvgStroke(vg);
    }

    /** Strokes with round ends and corners. */
    public void strokeRound(int rgb, double width) {
        nvgStrokeColor(vg, rgba(rgb, 1));
        nvgStrokeWidth(vg, (float) width);
        nvgLineCap(vg, NVG_ROUND);
        nvgLineJoin(vg, NVG_ROUND);
        nvgStroke(vg);
    }

    /** A level line, snapped to whole pixels when thin. */
    public void level(double x0, double x1, double y, int rgb, double width) {
        double at = width <= 1.6 ? snap(y, width) : y;
        path().moveTo(x0, at).lineTo(x1, at).stroke(rgb, width);
    }

    /** An upright line, snapped to whole pixels when thin. */
    public void upright(double x, double y0, double y1, int rgb, double width) {
        double at = width <= 1.6 ? snap(x, width) : x;
        path().moveTo(at, y0).lineTo(at, y1).stroke(rgb, width);
    }

    private static double snap(double at, double width) {
        return Math.round(width) % 2 == 0 ? Math.round(at) : Math.floor(at) + 0.5;
    }

    /** Nothing outside this box is drawn (shapes only) until {@link #unclip}. */
    public void clip(double x, double y, double w, double h) {
        nvgScissor(vg, (float) x, (float) y, (float) w, (float) h);
    }

    public void unclip() {
        nvgResetScissor(vg);
    }

    @Override
    public void close() {
        painter.close();
        NanoVGGL3.nvgDelete(vg);
        colour.free();
        paint.free();
    }
}
