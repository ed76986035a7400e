// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.lwjgl.glfw.GLFW.*;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.NewMachine;
import foldwright.machine.file.Seed;
import foldwright.report.Report;
import foldwright.study.Assessment;
import foldwright.viewer.picture.WholeFile;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.sheet.Studio;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;

/** A line being typed: the name of a file to open or to save. */
final class Prompt {
    private final Purpose purpose;
    private final StringBuilder typed;
    private volatile String hint;

    private enum Purpose {
        SAVE,
        OPEN,
        NEW,
        REPORT
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

    /** Asks for the name of a machine that begins as a copy of a seed. */
    static Prompt fresh() {
        return new Prompt(
                Purpose.NEW,
                "two-stage my lift",
                "seed, then a name; seeds: " + String.join(", ", Seed.words()));
    }

    /** Asks for the folder of a report. */
    static Prompt report(Desk desk) {
        Path path = desk.path().orElseThrow().toAbsolutePath();
        String name = path.getFileName().toString().replaceFirst("\\.json$", "");
        return new Prompt(
                Purpose.REPORT,
                path.resolveSibling(name + "-report").toString(),
                "Enter writes report.html into this folder; Esc leaves it");
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
        if (purpose == Purpose.REPORT) {
            writeReport(desk);
            return State.OPEN;
        }
        try {
            if (purpose == Purpose.NEW) {
                desk.open(copyOfSeed(desk));
                return State.DONE;
            }
            Path name = Path.of(typed.toString());
            if (purpose == Purpose.SAVE) {
                if (Files.exists(name)) {
                    hint = name.getFileName() + " exists: choose another name";
                    return State.OPEN;
                }
                desk.save(name);
            } else {
                desk.open(name);
            }
            return State.DONE;
        } catch (IOException
                | BadMachineFile
                | CannotOpenException
                | NewMachine.Refused
                | InvalidPathException e) {
            hint = String.valueOf(e.getMessage()).lines().findFirst().orElse("cannot be used");
            return State.OPEN;
        }
    }

    private Path copyOfSeed(Desk desk) throws IOException, NewMachine.Refused {
        String[] words = typed.toString().strip().split("\\s+", 2);
        Seed seed = Seed.find(words[0]).orElseThrow(() -> new IOException(hint));
        Path folder = desk.path().orElse(Path.of("x")).toAbsolutePath().getParent();
        return NewMachine.create(words.length > 1 ? words[1] : words[0], seed, folder);
    }

    /** Assesses on a thread of its own, since that takes seconds; the line tells how it went. */
    private void writeReport(Desk desk) {
        Path folder;
        try {
            folder = Path.of(typed.toString());
        } catch (InvalidPathException e) {
            hint = "this cannot be a folder: " + e.getReason();
            return;
        }
        Machine machine = desk.machine();
        hint = "working: every check, then the report";
        Thread writer = new Thread(() -> hint = written(machine, folder), "report");
        writer.setDaemon(true);
        writer.start();
    }

    private static String written(Machine machine, Path folder) {
        try {
            Assessment all = LiftEngine.assess(machine);
            Files.createDirectories(folder);
            Path page = folder.resolve("report.html");
            String html = Report.html(all, LocalDate.now());
            WholeFile.write(page, out -> out.write(html.getBytes(StandardCharsets.UTF_8)));
            return "wrote " + page + "; Esc closes this";
        } catch (IOException | RuntimeException e) {
            return "could not be written: " + e.getMessage();
        } finally {
            glfwPostEmptyEvent();
        }
    }

    Studio.Overlay overlay() {
        String title =
                switch (purpose) {
                    case SAVE -> "Save as a new machine file";
                    case OPEN -> "Open a machine or a run";
                    case NEW -> "Begin with a seed";
                    case REPORT -> "Write the report";
                };
        return Sheets.prompt(title, typed.toString(), hint);
    }
}
