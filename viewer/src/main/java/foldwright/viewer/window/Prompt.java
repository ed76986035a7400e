// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.lwjgl.glfw.GLFW.*;

import foldwright.machine.file.BadMachineFile;
import foldwright.viewer.sheet.Studio;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A line being typed: the name of a file to open or to save. */
final class Prompt {
    private final Purpose purpose;
    private final StringBuilder typed;
    private String hint;

    private enum Purpose {
        SAVE,
        OPEN
    }

    /** Whether the line stays. */
    enum State {
        OPEN,
        DONE
    }

    private Prompt(Purpose purpose, String start, String hint) {
        this.purpose = purpose;
        typed = new StringBuilder(start);
        this.hint = hint;
    }

    /** Asks for the name of a new machine file. */
    static Prompt save(Desk desk) {
        return new Prompt(
                Purpose.SAVE,
                newName(desk.path().orElseThrow().toAbsolutePath()),
                "Enter saves, Esc leaves it; comments of the file are kept");
    }

    /** Asks for a file to open. */
    static Prompt open(Desk desk) {
        String folder =
                desk.path().map(p -> p.toAbsolutePath().getParent() + File.separator).orElse("");
        return new Prompt(Purpose.OPEN, folder, "Enter opens, Esc leaves it");
    }

    /** The file's name with a number behind it that is not taken. */
    private static String newName(Path path) {
        String name = path.getFileName().toString().replaceFirst("\\.json$", "");
        for (int i = 2; ; i++) {
            Path next = path.resolveSibling(name + "-" + i + ".json");
            if (!Files.exists(next)) {
                return next.toString();
            }
        }
    }

    void letter(int code) {
        typed.appendCodePoint(code);
    }

    /** A key went down. */
    State key(int key, Desk desk) {
        switch (key) {
            case GLFW_KEY_ESCAPE -> {
                return State.DONE;
            }
            case GLFW_KEY_BACKSPACE -> {
                if (typed.length() > 0) {
                    typed.setLength(typed.length() - 1);
                }
            }
            case GLFW_KEY_ENTER, GLFW_KEY_KP_ENTER -> {
                return finish(desk);
            }
            default -> {}
        }
        return State.OPEN;
    }

    private State finish(Desk desk) {
        try {
            Path name = Path.of(typed.toString());
            if (purpose == Purpose.SAVE) {
                if (Files.exists(name)) {
                    hint = name.getFileName() + " exists: choose another name";
                    return State.OPEN;
                }
                desk.save(name);
            }
            double height = desk.height();
            desk.open(name);
            if (purpose == Purpose.SAVE) {
                desk.height(height);
            }
            return State.DONE;
        } catch (IOException | BadMachineFile | CannotOpenException | InvalidPathException e) {
            hint = String.valueOf(e.getMessage()).lines().findFirst().orElse("cannot be used");
            return State.OPEN;
        }
    }

    Studio.Overlay overlay() {
        String title =
                purpose == Purpose.SAVE ? "Save as a new machine file" : "Open a machine or a run";
        return Sheets.prompt(title, typed.toString(), hint);
    }
}
