// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.lwjgl.glfw.GLFW.*;

import foldwright.study.Question;
import foldwright.viewer.play.Playback;
import foldwright.viewer.session.Dial;
import foldwright.viewer.sheet.Hits;
import foldwright.viewer.sheet.Studio;
import java.util.Optional;

/**
 * Turns keys and mouse into what happens on the desk. Positions are pixels of the picture. No GLFW
 * calls: the window hands events over, so the same path is driven by tests.
 */
public final class Hand {
    private static final double CLICK = 4;

    private final Desk desk;
    private final Gaze gaze;
    private final Studio studio;
    private final Focus focus;
    private final Pointer pointer = new Pointer();
    private Hits.Hit held;
    private boolean onTable;
    private boolean sliding;
    private boolean along;
    private double x;
    private double y;
    private double downX;
    private double downY;
    private boolean help;
    private Prompt prompt;
    private boolean swallow;
    private Wish wish = Wish.NONE;

    /** What the hand asks of the window. */
    public enum Wish {
        NONE,
        CLOSE,
        NEXT_DEMO
    }

    public Hand(Desk desk, Gaze gaze, Studio studio) {
        this.desk = desk;
        this.gaze = gaze;
        this.studio = studio;
        focus = new Focus(desk, studio);
    }

    // ---- mouse

    /** The pointer moved. */
    public void move(double px, double py) {
        double dx = px - x;
        double dy = py - y;
        x = px;
        y = py;
        if (held == null && !onTable) {
            pointer.hover(studio, x, y);
        }
        if (held != null) {
            drag();
        } else if (onTable && Math.hypot(px - downX, py - downY) > CLICK) {
            if (sliding) {
                gaze.slide(dx, dy);
            } else {
                gaze.turn(dx, dy, 0.008 / studio.layout().u);
            }
        }
    }

    /** The left button went down. */
    public void press(boolean shift) {
        downX = x;
        downY = y;
        help = false;
        Optional<Hits.Hit> hit = studio.hits().at(x, y);
        if (hit.isEmpty()) {
            onTable = x < studio.layout().scaleX() && y < studio.layout().rulesTop();
            sliding = shift;
            return;
        }
        Playback playback = desk.playback();
        switch (hit.get().kind()) {
            case CARD -> open(Question.values()[hit.get().index()]);
            case PLOT -> desk.height(studio.table().heights().value(y));
            case PLAY -> desk.play(Desk.Way.SAME);
            case STEP -> playback.step(hit.get().index() == 0 ? -1 : 1);
            case LOOP -> playback.active().ifPresent(r -> r.player().toggleLoop());
            case MARK -> playback.mark(hit.get().index());
            default -> hold(hit.get());
        }
    }

    private void hold(Hits.Hit hit) {
        held = hit;
        if (hit.kind() == Hits.Kind.RULE) {
            desk.mark();
        }
        drag();
    }

    /** The place of the pointer along a thing that is held, 0 to 1. */
    private double share(double pad) {
        return (x - held.x() - pad) / (held.width() - 2 * pad);
    }

    private void drag() {
        Playback playback = desk.playback();
        switch (held.kind()) {
            case RULE -> {
                Dial dial = desk.dials().get(held.index());
                desk.tryValue(dial, dial.at(share(studio.layout().of(8, 6))));
            }
            case SPEED -> playback.active().ifPresent(r -> r.player().speedShare(share(0)));
            case LARGER -> larger();
            default -> {
                if (playback.along() && playback.active().isPresent()) {
                    playback.seek(
                            Studio.wayAt(studio.layout(), playback.active().get().axisEnd(), y));
                } else {
                    desk.height(studio.table().heights().value(y));
                }
            }
        }
    }

    private void larger() {
        if (desk.playback().along()) {
            desk.playback().largerShare(share(0));
        } else {
            desk.largerShare(share(0));
        }
    }

    /** The left button went up. */
    public void release() {
        if (held != null && held.kind() == Hits.Kind.RULE) {
            desk.settle();
        }
        if (onTable && Math.hypot(x - downX, y - downY) <= CLICK) {
            pointer.click(desk, studio, x, y);
        }
        held = null;
        onTable = false;
    }

    /** The wheel turned. */
    public void wheel(double steps) {
        Hits.Kind kind = studio.hits().at(x, y).map(Hits.Hit::kind).orElse(Hits.Kind.CARD);
        if (kind == Hits.Kind.TAB || kind == Hits.Kind.SCALE || kind == Hits.Kind.WAY) {
            nudge(steps, 1);
        } else if (x < studio.layout().scaleX()) {
            double cx = (studio.layout().tableLeft() + studio.layout().tableRight()) / 2;
            double cy = (studio.layout().tableTop() + studio.layout().tableBottom()) / 2;
            gaze.zoom(Math.pow(1.12, steps), x, y, cx, cy);
        }
    }

    /** Whether something is being dragged, so that fewer samples do. */
    public boolean busy() {
        return held != null || onTable || pointer.takeChange();
    }

    // ---- keys

    /** A letter was typed. */
    public void letter(int code) {
        if (swallow) {
            // The key that opened the line is not part of it.
            swallow = false;
        } else if (prompt != null) {
            prompt.letter(code);
        } else if (code == '?') {
            help = !help;
        } else if (code == '+') {
            gaze.textScale(gaze.textScale() * 1.1);
        } else if (code == '-') {
            gaze.textScale(gaze.textScale() / 1.1);
        }
    }

    /** A key went down (GLFW code and modifiers). */
    public void key(int key, int mods) {
        if (prompt != null) {
            prompt = prompt.key(key, desk) == Prompt.State.DONE ? null : prompt;
            return;
        }
        boolean shift = (mods & GLFW_MOD_SHIFT) != 0;
        if ((mods & GLFW_MOD_CONTROL) != 0 || (mods & GLFW_MOD_SUPER) != 0) {
            control(key);
        } else if (key >= GLFW_KEY_1 && key <= GLFW_KEY_6) {
            open(Question.values()[key - GLFW_KEY_1]);
        } else if (!playKey(key, shift)) {
            plain(key, shift);
        }
    }

    private void plain(int key, boolean shift) {
        desk.companion().forget();
        switch (key) {
            case GLFW_KEY_UP -> nudge(1, shift ? 10 : 1);
            case GLFW_KEY_DOWN -> nudge(-1, shift ? 10 : 1);
            case GLFW_KEY_LEFT -> focus.turn(shift ? -0.05 : -0.01);
            case GLFW_KEY_RIGHT -> focus.turn(shift ? 0.05 : 0.01);
            case GLFW_KEY_W -> worst();
            case GLFW_KEY_X -> desk.larger(shift ? -1 : 1);
            case GLFW_KEY_L -> desk.nextOverlay();
            case GLFW_KEY_F -> desk.toggleForces();
            case GLFW_KEY_U -> desk.nextGround();
            case GLFW_KEY_G -> desk.companion().toggle();
            case GLFW_KEY_B -> desk.companion().change();
            case GLFW_KEY_ENTER -> desk.keep();
            case GLFW_KEY_HOME -> gaze.home();
            case GLFW_KEY_P -> gaze.above();
            case GLFW_KEY_T -> gaze.otherTheme();
            case GLFW_KEY_PAGE_DOWN -> pointer.next(desk, 1);
            case GLFW_KEY_PAGE_UP -> pointer.next(desk, -1);
            case GLFW_KEY_TAB -> focus.next(shift ? -1 : 1).ifPresent(this::open);
            case GLFW_KEY_O -> {
                prompt = Prompt.open(desk);
                swallow = true;
            }
            case GLFW_KEY_N -> {
                prompt = Prompt.fresh();
                swallow = true;
            }
            case GLFW_KEY_R -> {
                prompt = Prompt.report(desk);
                swallow = true;
            }
            case GLFW_KEY_D -> wish = Wish.NEXT_DEMO;
            case GLFW_KEY_ESCAPE -> escape();
            default -> {}
        }
    }

    /** Keys of runs; whether it was one. */
    private boolean playKey(int key, boolean shift) {
        Playback playback = desk.playback();
        switch (key) {
            case GLFW_KEY_SPACE -> desk.play(shift ? Desk.Way.OTHER : Desk.Way.SAME);
            case GLFW_KEY_COMMA -> playback.active().ifPresent(r -> r.player().faster(-1));
            case GLFW_KEY_PERIOD -> playback.active().ifPresent(r -> r.player().faster(1));
            case GLFW_KEY_J -> playback.step(-1);
            case GLFW_KEY_K -> playback.step(1);
            case GLFW_KEY_M -> playback.nextMark(shift ? -1 : 1);
            case GLFW_KEY_A -> playback.active().ifPresent(r -> r.player().toggleLoop());
            default -> {
                return false;
            }
        }
        return true;
    }

    private void control(int key) {
        switch (key) {
            case GLFW_KEY_Z -> desk.undo();
            case GLFW_KEY_Y -> desk.redo();
            case GLFW_KEY_S -> prompt = Prompt.save(desk);
            case GLFW_KEY_Q -> wish = Wish.CLOSE;
            default -> {}
        }
    }

    private void open(Question question) {
        desk.ask(question);
    }

    /** Toolpaths are looked at from above, whichever way one came to them. */
    private void follow() {
        boolean now = desk.playback().along();
        if (now && !along) {
            gaze.above();
        } else if (along && !now) {
            gaze.home();
        }
        along = now;
    }

    /** Along the path by millimetres, or the deck. */
    private void nudge(double sign, double millimetres) {
        Playback playback = desk.playback();
        if (playback.along() && playback.active().isPresent()) {
            playback.seek(playback.active().get().place() + sign * 0.001 * millimetres);
        } else {
            desk.height(desk.height() + sign * 0.001 * millimetres);
        }
    }

    private void worst() {
        Playback playback = desk.playback();
        if (playback.along() && playback.active().isPresent()) {
            playback.stop();
            playback.active().get().player().seek(playback.active().get().worst());
        } else {
            desk.worst().ifPresent(desk::height);
        }
    }

    private void escape() {
        if (help) {
            help = false;
        } else if (desk.pointed() != 0) {
            desk.point(0);
        } else if (!desk.playback().stop()) {
            focus.clear();
        }
    }

    // ---- time and what lies over the sheet

    /** Lets time pass; whether the machine is moving. */
    public boolean pass(double seconds) {
        follow();
        return desk.playback().pass(seconds);
    }

    /** What lies over the sheet now. */
    public Studio.Overlay overlay() {
        Studio.Overlay over = Sheets.both(focus.overlay(), pointer.overlay(desk, studio, x, y));
        if (desk.trouble().isPresent()) {
            Desk.Trouble trouble = desk.trouble().get();
            over = Sheets.both(over, Sheets.problems(trouble.title(), trouble.message()));
        }
        if (prompt != null) {
            over = Sheets.both(over, prompt.overlay());
        }
        return help ? Sheets.both(over, Sheets.help()) : over;
    }

    /** What the hand asks of the window, once. */
    public Wish takeWish() {
        Wish now = wish;
        wish = Wish.NONE;
        return now;
    }
}
