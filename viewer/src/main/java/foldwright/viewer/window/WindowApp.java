// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.lwjgl.glfw.GLFW.*;

import foldwright.report.draw.Theme;
import foldwright.study.Numerals;
import foldwright.viewer.beside.Second;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.gl.NoGraphicsException;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.session.Engine;
import foldwright.viewer.sheet.Studio;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The window: waits for events, draws when something changed, fewer samples while anything moves.
 */
public final class WindowApp implements AutoCloseable {
    private static final double REST = 0.15;
    private static final double LOOK_AT_FILE = 0.5;

    /**
     * No glide goes further between two pictures than in this time [s], however long nothing moved.
     */
    private static final double LEAP = 0.05;

    private final GlSurface surface;
    private final Studio studio;
    private final Desk desk;
    private final Gaze gaze = new Gaze();
    private final Hand hand;
    private final Memory memory;
    private final List<Path> demos;
    private long shownScene = -1;
    private boolean stale = true;
    private boolean exposed;
    private double lastMove;
    private double lastFileLook;
    private FileTime lastWritten;
    private MachineRenderer.Quality drawn;
    private double ratio = 1;

    private WindowApp(
            GlSurface surface, Studio studio, Desk desk, List<Path> demos, Memory memory) {
        this.surface = surface;
        this.studio = studio;
        this.desk = desk;
        this.demos = List.copyOf(demos);
        this.memory = memory;
        hand = new Hand(desk, gaze, studio);
        gaze.theme(memory.word("theme", "LIGHT").equals("DARK") ? Theme.DARK : Theme.LIGHT);
        gaze.textScale(memory.number("text", 100, 80, 160) / 100.0);
    }

    /**
     * What goes with a file.
     *
     * @param toolpath for replays; left out: the one beside the machine
     * @param second another machine, over it or beside it
     */
    public record Opening(Optional<Path> toolpath, Optional<Second> second) {}

    /**
     * Opens the window on a file and stays until it is closed.
     *
     * @param opening what goes with the file
     * @param demos machines that the demo key walks through
     */
    public static void run(Path file, Opening opening, Engine engine, List<Path> demos)
            throws CannotOpenException {
        AtomicBoolean listening = new AtomicBoolean();
        Memory memory = Memory.usual();
        try (Desk desk = new Desk(engine, () -> wake(listening))) {
            desk.playback().path(opening.toolpath());
            desk.companion().put(opening.second());
            desk.calculator().hold();
            Reading reading = new Reading(desk, file);
            try (WindowApp app = open(reading, demos, memory)) {
                if (desk.playback().along()) {
                    app.gaze.above();
                }
                app.lastWritten = written(file);
                app.listen();
                listening.set(true);
                wake(listening);
                app.loop();
            }
        }
    }

    /** Starts the driver while the file is read. */
    private static WindowApp open(Reading reading, List<Path> demos, Memory memory)
            throws CannotOpenException {
        GlSurface surface;
        try {
            surface =
                    GlSurface.window(
                            "Foldwright",
                            memory.number("width", 1280, 800, 7680),
                            memory.number("height", 720, 450, 4320));
        } catch (NoGraphicsException e) {
            // What is wrong with the file is told before what is wrong with the computer.
            reading.finished();
            throw e;
        }
        Studio studio = new Studio();
        try {
            return new WindowApp(surface, studio, reading.finished(), demos, memory);
        } catch (CannotOpenException e) {
            studio.close();
            surface.close();
            throw e;
        }
    }

    /**
     * Does without a display what opening a window does, as far as the first pictures, so that it
     * is known which classes that takes.
     *
     * @param demos machines that the demo key walks through
     * @param memory a file to remember the window in
     */
    public static void rehearse(Path file, Engine engine, List<Path> demos, Path memory)
            throws CannotOpenException {
        Semaphore answers = new Semaphore(0);
        try (Desk desk = new Desk(engine, answers::release)) {
            Reading reading = new Reading(desk, file);
            GlSurface surface = GlSurface.headless(1280, 720);
            Studio studio = new Studio();
            try (WindowApp app =
                    new WindowApp(surface, studio, reading.finished(), demos, new Memory(memory))) {
                app.listen();
                app.draw(MachineRenderer.Quality.MOVING);
                answers.acquireUninterruptibly();
                app.takeFirst();
                app.draw(MachineRenderer.Quality.REST);
            }
        }
    }

    private static void wake(AtomicBoolean listening) {
        if (listening.get()) {
            glfwPostEmptyEvent();
        }
    }

    private void listen() {
        long w = surface.handle();
        glfwSetCursorPosCallback(
                w,
                (win, px, py) -> {
                    hand.move(px * ratio, py * ratio);
                    stale |= hand.busy();
                });
        glfwSetMouseButtonCallback(
                w,
                (win, button, action, mods) -> {
                    if (button == GLFW_MOUSE_BUTTON_LEFT && action == GLFW_PRESS) {
                        hand.press((mods & GLFW_MOD_SHIFT) != 0);
                    } else if (button == GLFW_MOUSE_BUTTON_LEFT) {
                        hand.release();
                    }
                    stale = true;
                });
        glfwSetScrollCallback(
                w,
                (win, dx, dy) -> {
                    hand.wheel(dy);
                    stale = true;
                });
        glfwSetKeyCallback(
                w,
                (win, key, code, action, mods) -> {
                    if (action != GLFW_RELEASE) {
                        hand.key(key, mods);
                        stale = true;
                    }
                });
        glfwSetCharCallback(
                w,
                (win, code) -> {
                    hand.letter(code);
                    stale = true;
                });
        glfwSetFramebufferSizeCallback(w, (win, fw, fh) -> stale = true);
        glfwSetWindowRefreshCallback(w, win -> exposed = true);
        surface.onDrop(files -> openDropped(files.get(0)));
    }

    private void openDropped(Path file) {
        try {
            desk.open(file);
            lastWritten = written(file);
        } catch (CannotOpenException e) {
            desk.trouble(file, e.getMessage());
        }
        stale = true;
    }

    private void loop() {
        glfwSwapInterval(1);
        double before = glfwGetTime();
        // The first picture with fewer samples; no more is computed before it stands.
        takeFirst();
        draw(MachineRenderer.Quality.MOVING);
        glfwShowWindow(surface.handle());
        show();
        desk.calculator().goOn();
        lastMove = glfwGetTime();
        while (!glfwWindowShouldClose(surface.handle())) {
            glfwWaitEventsTimeout(
                    moving()
                            ? 0.001
                            : drawn == MachineRenderer.Quality.REST ? LOOK_AT_FILE : REST / 2);
            double now = glfwGetTime();
            stale |= desk.takeResults();
            double leap = Math.min(LEAP, now - before);
            boolean glides = gaze.pass(leap) | desk.pass(leap);
            boolean motion = hand.pass(now - before) | glides | hand.busy();
            before = now;
            stale |= motion;
            lookAtFile(now);
            obey(hand.takeWish());
            if (motion) {
                lastMove = now;
            }
            boolean rested = now - lastMove > REST;
            if (stale || rested && drawn != MachineRenderer.Quality.REST) {
                draw(rested ? MachineRenderer.Quality.REST : MachineRenderer.Quality.MOVING);
            } else if (exposed) {
                show();
            }
        }
    }

    /**
     * Takes the answer where it is there before the first picture; nobody saw the deck elsewhere.
     */
    private void takeFirst() {
        desk.takeResults();
        desk.pass(Double.POSITIVE_INFINITY);
    }

    private boolean moving() {
        return glfwGetTime() - lastMove < REST / 3;
    }

    private void obey(Hand.Wish wish) {
        if (wish == Hand.Wish.CLOSE) {
            glfwSetWindowShouldClose(surface.handle(), true);
        } else if (wish == Hand.Wish.NEXT_DEMO && !demos.isEmpty()) {
            int at = desk.path().map(p -> demos.indexOf(p)).orElse(-1);
            openDropped(demos.get((at + 1) % demos.size()));
        }
    }

    private void lookAtFile(double now) {
        if (now - lastFileLook < LOOK_AT_FILE || desk.path().isEmpty()) {
            return;
        }
        lastFileLook = now;
        FileTime written = written(desk.path().get());
        if (written != null && !written.equals(lastWritten)) {
            if (lastWritten != null) {
                desk.reload();
                stale = true;
            }
            lastWritten = written;
        }
    }

    private static FileTime written(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            // Being replaced just now, or gone: the machine on the table stays.
            return null;
        }
    }

    private void draw(MachineRenderer.Quality quality) {
        int[] size = surface.framebufferSize();
        if (size[0] < 64 || size[1] < 64) {
            return;
        }
        int[] units = new int[1];
        glfwGetWindowSize(surface.handle(), units, null);
        ratio = (double) size[0] / Math.max(1, units[0]);
        if (shownScene != desk.sceneNumber()) {
            desk.stand(studio);
            shownScene = desk.sceneNumber();
        }
        studio.pale(desk.trouble().isPresent() ? 0.6 : 0);
        studio.size(size[0], size[1], gaze.textScale());
        var page = desk.page();
        Studio.Look look = gaze.look(quality);
        studio.drawMachine(page.moment(), look);
        studio.drawSheet(page.model(), page.marks(), look, hand.overlay());
        show();
        glfwSetWindowTitle(surface.handle(), title());
        drawn = quality;
        stale = false;
    }

    /** Puts the finished sheet into the window: a window that was not visible has lost it. */
    private void show() {
        studio.present();
        glfwSwapBuffers(surface.handle());
        exposed = false;
    }

    /** Says what is before the user, for those who hear the window rather than see it. */
    private String title() {
        String file = desk.path().map(p -> p.getFileName().toString()).orElse("");
        String part = desk.reading(desk.pointed()).map(r -> ", " + r.spoken()).orElse("");
        return file
                + (desk.changed() ? " (changed)" : "")
                + desk.companion().words()
                + ", "
                + Numerals.fixed(desk.height() * 1000, 1)
                + " mm"
                + desk.waiting().map(words -> ", " + words).orElse("")
                + desk.playback().title()
                + part
                + " - Foldwright";
    }

    @Override
    public void close() {
        int[] w = new int[1];
        int[] h = new int[1];
        glfwGetWindowSize(surface.handle(), w, h);
        memory.set("width", w[0]);
        memory.set("height", h[0]);
        memory.set("theme", gaze.theme());
        memory.set("text", Math.round(100 * gaze.textScale()));
        memory.save();
        studio.close();
        surface.close();
    }
}
