// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.lwjgl.glfw.GLFW.*;

import foldwright.study.Question;
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
    private Hits.Hit held;
    private boolean onTable;
    private boolean sliding;
    private double x;
    private double y;
    private double downX;
    private double downY;
    private boolean help;
    private Prompt prompt;
    private boolean swallow;
    private Hits.Kind focusKind;
    private int focusIndex;
    private double speed = 1;
    private boolean running;
    private Wish wish = Wish.NONE;
    private final Pointer pointer = new Pointer();

    /** What the hand asks of the window. */
    public enum Wish {
        NONE,
        CLOSE,
        NEXT_DEMO
    }

    /** A line being typed. */
    private static final class Prompt {
        final Purpose purpose;
        final StringBuilder typed;
        String hint;

        Prompt(Purpose purpose, String start, String hint) {
            this.purpose = purpose;
            typed = new StringBuilder(start);
            this.hint = hint;
        }
    }

    private enum Purpose {
        SAVE,
        OPEN
    }

    public Hand(Desk desk, Gaze gaze, Studio studio) {
        this.desk = desk;
        this.gaze = gaze;
        this.studio = studio;
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
        switch (hit.get().kind()) {
            case CARD -> desk.ask(Question.values()[hit.get().index()]);
            case PLOT -> desk.height(studio.table().heights().value(y));
            case TAB, SCALE, RULE -> hold(hit.get());
        }
    }

    private void hold(Hits.Hit hit) {
        held = hit;
        running = false;
        if (hit.kind() == Hits.Kind.RULE) {
            desk.mark();
        }
        drag();
    }

    private void drag() {
        if (held.kind() == Hits.Kind.RULE) {
            Dial dial = desk.dials().get(held.index());
            double pad = studio.layout().of(8, 6);
            double share = (x - held.x() - pad) / (held.width() - 2 * pad);
            desk.tryValue(dial, dial.at(share));
        } else {
            desk.height(studio.table().heights().value(y));
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
        boolean scale =
                studio.hits()
                        .at(x, y)
                        .filter(h -> h.kind() == Hits.Kind.TAB || h.kind() == Hits.Kind.SCALE)
                        .isPresent();
        if (scale) {
            desk.height(desk.height() + 0.001 * steps);
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
            prompt.typed.appendCodePoint(code);
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
            typing(key);
            return;
        }
        boolean shift = (mods & GLFW_MOD_SHIFT) != 0;
        if ((mods & GLFW_MOD_CONTROL) != 0 || (mods & GLFW_MOD_SUPER) != 0) {
            control(key);
            return;
        }
        if (key >= GLFW_KEY_1 && key <= GLFW_KEY_6) {
            desk.ask(Question.values()[key - GLFW_KEY_1]);
            return;
        }
        switch (key) {
            case GLFW_KEY_UP, GLFW_KEY_DOWN ->
                    upDown(key == GLFW_KEY_UP ? 1 : -1, shift ? 0.010 : 0.001);
            case GLFW_KEY_LEFT -> turnDial(-1, shift);
            case GLFW_KEY_RIGHT -> turnDial(1, shift);
            case GLFW_KEY_W -> desk.worst().ifPresent(desk::height);
            case GLFW_KEY_SPACE -> running = !running;
            case GLFW_KEY_COMMA -> speed = Math.max(1 / 50.0, speed / 1.5);
            case GLFW_KEY_PERIOD -> speed = Math.min(50, speed * 1.5);
            case GLFW_KEY_X -> desk.larger(shift ? -1 : 1);
            case GLFW_KEY_L -> desk.nextOverlay();
            case GLFW_KEY_F -> desk.toggleForces();
            case GLFW_KEY_ENTER -> desk.keep();
            case GLFW_KEY_HOME -> gaze.home();
            case GLFW_KEY_P -> gaze.above();
            case GLFW_KEY_T -> gaze.otherTheme();
            case GLFW_KEY_PAGE_DOWN, GLFW_KEY_PAGE_UP ->
                    pointer.next(desk, key == GLFW_KEY_PAGE_DOWN ? 1 : -1);
            case GLFW_KEY_TAB -> nextFocus(shift ? -1 : 1);
            case GLFW_KEY_O -> {
                prompt = new Prompt(Purpose.OPEN, folder(), "Enter opens, Esc leaves it");
                swallow = true;
            }
            case GLFW_KEY_D -> wish = Wish.NEXT_DEMO;
            case GLFW_KEY_ESCAPE -> escape();
            default -> {}
        }
    }

    private void control(int key) {
        switch (key) {
            case GLFW_KEY_Z -> desk.undo();
            case GLFW_KEY_Y -> desk.redo();
            case GLFW_KEY_S ->
                    prompt =
                            new Prompt(
                                    Purpose.SAVE,
                                    newName(),
                                    "Enter saves, Esc leaves it; comments of the file are kept");
            case GLFW_KEY_Q -> wish = Wish.CLOSE;
            default -> {}
        }
    }

    private void upDown(int sign, double step) {
        running = false;
        desk.height(desk.height() + sign * step);
    }

    private void turnDial(int sign, boolean shift) {
        if (focusKind != Hits.Kind.RULE || focusIndex >= desk.dials().size()) {
            return;
        }
        Dial dial = desk.dials().get(focusIndex);
        desk.mark();
        desk.tryValue(dial, dial.at(dial.share(desk.value(dial)) + sign * (shift ? 0.05 : 0.01)));
        desk.settle();
    }

    private void escape() {
        if (help) {
            help = false;
        } else if (desk.pointed() != 0) {
            desk.point(0);
        } else if (running) {
            running = false;
        } else {
            focusKind = null;
        }
    }

    /** Walks tab, cards, rules. */
    private void nextFocus(int step) {
        int cards = Question.values().length;
        int all = 1 + cards + desk.dials().size();
        int now =
                focusKind == null
                        ? (step > 0 ? -1 : all)
                        : focusKind == Hits.Kind.TAB
                                ? 0
                                : focusKind == Hits.Kind.CARD
                                        ? 1 + focusIndex
                                        : 1 + cards + focusIndex;
        for (int i = 0; i < all; i++) {
            now = Math.floorMod(now + step, all);
            focusKind = now == 0 ? Hits.Kind.TAB : now <= cards ? Hits.Kind.CARD : Hits.Kind.RULE;
            focusIndex = now == 0 ? 0 : now <= cards ? now - 1 : now - 1 - cards;
            if (studio.hits().of(focusKind, focusIndex).isPresent()) {
                break;
            }
        }
        if (focusKind == Hits.Kind.CARD) {
            desk.ask(Question.values()[focusIndex]);
        }
    }

    private void typing(int key) {
        switch (key) {
            case GLFW_KEY_ESCAPE -> prompt = null;
            case GLFW_KEY_BACKSPACE -> {
                if (prompt.typed.length() > 0) {
                    prompt.typed.setLength(prompt.typed.length() - 1);
                }
            }
            case GLFW_KEY_ENTER, GLFW_KEY_KP_ENTER -> finish();
            default -> {}
        }
    }

    private void finish() {
        java.nio.file.Path name = java.nio.file.Path.of(prompt.typed.toString());
        try {
            if (prompt.purpose == Purpose.SAVE) {
                if (java.nio.file.Files.exists(name)) {
                    prompt.hint = name.getFileName() + " exists: choose another name";
                    return;
                }
                desk.save(name);
            }
            double height = desk.height();
            desk.open(name);
            if (prompt.purpose == Purpose.SAVE) {
                desk.height(height);
            }
            prompt = null;
        } catch (java.io.IOException | foldwright.machine.file.BadMachineFile e) {
            prompt.hint =
                    String.valueOf(e.getMessage()).lines().findFirst().orElse("cannot be used");
        }
    }

    private String folder() {
        return desk.path()
                .map(p -> p.toAbsolutePath().getParent() + java.io.File.separator)
                .orElse("");
    }

    /** The file's name with a number behind it that is not taken. */
    private String newName() {
        java.nio.file.Path path = desk.path().orElseThrow().toAbsolutePath();
        String name = path.getFileName().toString().replaceFirst("\\.json$", "");
        for (int i = 2; ; i++) {
            java.nio.file.Path next = path.resolveSibling(name + "-" + i + ".json");
            if (!java.nio.file.Files.exists(next)) {
                return next.toString();
            }
        }
    }

    // ---- time and what lies over the sheet

    /** Lets time pass; whether the deck is moving. */
    public boolean pass(double seconds) {
        if (!running) {
            return false;
        }
        double flat = desk.scene().shape().flat();
        double top = desk.scene().shape().top();
        double next = desk.height() + (top - flat) / 10 * speed * seconds;
        desk.height(next > top ? flat : next);
        return true;
    }

    /** What lies over the sheet now. */
    public Studio.Overlay overlay() {
        Studio.Overlay over = Studio.Overlay.NONE;
        if (focusKind != null) {
            Optional<Hits.Hit> hit = studio.hits().of(focusKind, focusIndex);
            if (hit.isPresent()) {
                over =
                        Sheets.ring(
                                hit.get().x(),
                                hit.get().y(),
                                hit.get().width(),
                                hit.get().height());
            }
        }
        over = Sheets.both(over, pointer.overlay(desk, studio, x, y));
        if (desk.trouble().isPresent()) {
            over =
                    Sheets.both(
                            over,
                            Sheets.problems(
                                    desk.trouble().get().title(), desk.trouble().get().message()));
        }
        if (prompt != null) {
            String title =
                    prompt.purpose == Purpose.SAVE
                            ? "Save as a new machine file"
                            : "Open a machine file";
            over = Sheets.both(over, Sheets.prompt(title, prompt.typed.toString(), prompt.hint));
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
