// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.report.draw.Theme;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.sheet.Studio;

/**
 * How the machine is looked at: turn, zoom, shift, theme. Turning glides from the sheared home view
 * to a plain one.
 */
public final class Gaze {
    private static final double GLIDE = 0.25;

    private View.Stance stance = View.Stance.home();
    private View.Stance from = stance;
    private View.Stance to = stance;
    private double glide = 1;
    private double zoom = 1;
    private double moveX;
    private double moveY;
    private Theme theme = Theme.LIGHT;
    private double textScale = 1;

    /** The look at a quality. */
    public Studio.Look look(MachineRenderer.Quality quality) {
        return new Studio.Look(theme, stance, zoom, moveX, moveY, quality);
    }

    public View.Stance stance() {
        return stance;
    }

    public Theme theme() {
        return theme;
    }

    public double textScale() {
        return textScale;
    }

    public double zoom() {
        return zoom;
    }

    /** Light or dark. */
    public void otherTheme() {
        theme = theme == Theme.LIGHT ? Theme.DARK : Theme.LIGHT;
    }

    public void theme(Theme next) {
        theme = next;
    }

    /** Larger or smaller text. */
    public void textScale(double next) {
        textScale = Math.max(0.8, Math.min(1.6, next));
    }

    /** Turns by a drag on the table [px]. */
    public void turn(double dx, double dy, double perPixel) {
        View.Stance base = glide < 1 ? to : stance;
        to = base.turned(-dx * perPixel, dy * perPixel);
        if (stance.shear() > 0 && glide >= 1) {
            from = stance;
            glide = 0;
        } else if (glide >= 1) {
            stance = to;
        }
    }

    /** Shifts the machine [px]. */
    public void slide(double dx, double dy) {
        moveX += dx;
        moveY += dy;
    }

    /** Zooms at the pointer; the machine's middle is at (cx, cy) before. */
    public void zoom(double factor, double px, double py, double cx, double cy) {
        double next = Math.max(0.3, Math.min(12, zoom * factor));
        double k = next / zoom;
        // The point below the pointer stays: its offset from the middle grows by k.
        moveX += (px - cx - moveX) * (1 - k);
        moveY += (py - cy - moveY) * (1 - k);
        zoom = next;
    }

    public void home() {
        glideTo(View.Stance.home());
    }

    public void above() {
        glideTo(View.Stance.above());
    }

    private void glideTo(View.Stance next) {
        zoom = 1;
        moveX = 0;
        moveY = 0;
        from = stance;
        to = next;
        glide = next.plan() == stance.plan() ? 0 : 1;
        if (glide == 1) {
            stance = next;
        }
    }

    /** Lets time pass [s]; whether the view still moves. */
    public boolean pass(double seconds) {
        if (glide >= 1) {
            return false;
        }
        glide = Math.min(1, glide + seconds / GLIDE);
        double w = glide * glide * (3 - 2 * glide);
        stance =
                new View.Stance(
                        from.shear() + w * (to.shear() - from.shear()),
                        from.turn() + w * (to.turn() - from.turn()),
                        from.tilt() + w * (to.tilt() - from.tilt()),
                        to.plan());
        return glide < 1;
    }
}
