// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.viewer.Headless;
import foldwright.viewer.beside.Second;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.TableView;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drives the real window through the window system of a virtual display: drags the height scale,
 * picks a pin, changes a number, saves, reloads. The window says in its title what is before the
 * user; the test reads that.
 */
class WindowInputTest {
    private static final Layout LAYOUT = new Layout(1280, 720, 1);

    /** Where the springs let go and the margin is least: 109 mm by hand. */
    private static final String WORST = ".* (108\\.[89]|109\\.\\d) mm.*";

    private static final String TOP = ".* (179\\.[5-9]|180\\.[0-5]) mm.*";

    @TempDir Path folder;
    private Process display;
    private Process window;
    private String screen;
    private String id;

    private static boolean has(String program) {
        for (String dir : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            if (Files.isExecutable(Path.of(dir, program))) {
                return true;
            }
        }
        return false;
    }

    private static void require() {
        boolean there = has("Xvfb") && has("xdotool");
        if (!there && "1".equals(System.getenv("FOLDWRIGHT_REQUIRE_GL"))) {
            throw new AssertionError("Xvfb and xdotool are needed: apt-get install xvfb xdotool");
        }
        Assumptions.assumeTrue(there, "no virtual display here: apt-get install xvfb xdotool");
    }

    private String run(String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("DISPLAY", screen);
        builder.redirectErrorStream(true);
        Process p = builder.start();
        String out = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        p.waitFor(20, TimeUnit.SECONDS);
        return out.strip();
    }

    private void pointer(double x, double y) throws IOException, InterruptedException {
        run("xdotool", "mousemove", "--window", id, "" + Math.round(x), "" + Math.round(y));
        Thread.sleep(120);
    }

    private void drag(double x, double y, double toX, double toY)
            throws IOException, InterruptedException {
        pointer(x, y);
        run("xdotool", "mousedown", "1");
        for (int i = 1; i <= 4; i++) {
            pointer(x + (toX - x) * i / 4, y + (toY - y) * i / 4);
        }
        run("xdotool", "mouseup", "1");
    }

    private void key(String... keys) throws IOException, InterruptedException {
        for (String k : keys) {
            run("xdotool", "key", "--window", id, k);
            Thread.sleep(80);
        }
    }

    private String title(Predicate<String> wanted) throws IOException, InterruptedException {
        String now = "";
        for (int i = 0; i < 150; i++) {
            now = run("xdotool", "getwindowname", id);
            if (wanted.test(now)) {
                return now;
            }
            Thread.sleep(200);
        }
        return now;
    }

    private static List<String> foldwright(String... words) {
        List<String> out =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                "foldwright.viewer.Main"));
        out.addAll(List.of(words));
        return out;
    }

    private void open(String... words) throws IOException, InterruptedException {
        // The server takes a number that is free and says which.
        display =
                new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1280x720x24")
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        screen = ":" + display.inputReader(StandardCharsets.UTF_8).readLine();
        ProcessBuilder builder = new ProcessBuilder(foldwright(words));
        builder.environment().put("DISPLAY", screen);
        builder.environment().put("XDG_CONFIG_HOME", folder.resolve("config").toString());
        builder.redirectErrorStream(true).redirectOutput(folder.resolve("window.log").toFile());
        window = builder.start();
        for (int i = 0; i < 300 && (id == null || id.isEmpty()); i++) {
            Thread.sleep(200);
            id =
                    run("xdotool", "search", "--onlyvisible", "--name", "Foldwright")
                            .lines()
                            .findFirst()
                            .filter(l -> l.matches("\\d+"))
                            .orElse("");
        }
        assertThat(id).as(Files.readString(folder.resolve("window.log"))).isNotEmpty();
    }

    private void close() {
        if (window != null) {
            window.destroy();
        }
        if (display != null) {
            display.destroy();
        }
    }

    @Test
    void handsReachTheMachine() throws Exception {
        require();
        Path file = folder.resolve("bench.json");
        Files.copy(Headless.scene("van-bench"), file);
        try {
            open("watch", file.toString());
            dragTheTab();
            pickAPin();
            playTheUnfolding();
            playTheReplay();
            changeANumberUndoAndSave(file);
            reloadWhenTheFileChanges(file);
        } finally {
            close();
        }
    }

    /** A run file opens with its run; a second machine goes and comes back by key. */
    @Test
    void aRunAndASecondMachineAreOpened() throws Exception {
        require();
        String run = folder.resolve("bench-run.json").toString();
        String bench = Headless.scene("van-bench").toString();
        Process fold =
                new ProcessBuilder(foldwright("fold", bench, "--run", run))
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("fold.log").toFile())
                        .start();
        assertThat(fold.waitFor(120, TimeUnit.SECONDS)).isTrue();
        try {
            open("watch", run, "--over", Headless.scene("van-bench-binds").toString());
            String first = title(t -> t.contains("unfold"));
            assertThat(first)
                    .startsWith("bench-run.json and Van bench that binds,")
                    .contains("unfold");
            key("g");
            assertThat(title(t -> !t.contains("binds"))).startsWith("bench-run.json, ");
            key("g");
            assertThat(title(t -> t.contains("binds"))).contains(" and Van bench that binds,");
            key("k");
            assertThat(time(title(t -> time(t) > time(first)))).isGreaterThan(time(first));
        } finally {
            close();
        }
    }

    /** A second machine beside the first: its parts are read as its own; key B lays it over. */
    @Test
    void aMachineBesideIsReadAndLaidOver() throws Exception {
        require();
        Path binds = Headless.scene("van-bench-binds");
        try {
            open("watch", Headless.scene("van-bench").toString(), "--beside", binds.toString());
            assertThat(title(t -> t.contains("beside")))
                    .startsWith("van-bench.json and Van bench that binds beside it, ");
            MachineScene a = new MachineScene(Headless.machine("van-bench"));
            MachineScene b = new MachineScene(MachineFile.read(binds).machine());
            var table = new TableView(LAYOUT, a, b, Second.offset(a, b));
            double tab = table.heights().at(0.18);
            drag(LAYOUT.scaleX() + 6, table.heights().at(0.10), LAYOUT.scaleX() + 6, tab);
            assertThat(title(t -> t.matches(TOP))).matches(TOP);
            b.place(0.18);
            View view = table.view(View.Stance.home(), 1, 0, 0);
            var j = b.lift().joints();
            double z = b.machine().base().pinHeight() + j.z[1] / 2;
            double x = Second.offset(a, b) + (j.fixedX[0] + j.slidingX[1]) / 2;
            double y = -b.shape().outside();
            click(view.x(x, y, z), view.y(x, y, z));
            assertThat(title(t -> t.contains("% weight of")))
                    .containsPattern("B: front centre pin 1, force across it .*% weight of ");
            key("b");
            assertThat(title(t -> !t.contains("beside")))
                    .startsWith("van-bench.json and Van bench that binds, ")
                    .doesNotContain("B: ");
            key("b");
            assertThat(title(t -> t.contains("beside"))).contains("beside it, ");
        } finally {
            close();
        }
    }

    private TableView table(Machine machine) {
        return new TableView(LAYOUT, new MachineScene(machine));
    }

    private void dragTheTab() throws Exception {
        var heights = table(Headless.machine("van-bench")).heights();
        key("Up");
        drag(LAYOUT.scaleX() + 6, heights.at(0.10), LAYOUT.scaleX() + 6, heights.at(0.20));
        assertThat(title(t -> t.contains(" 200.") || t.contains(" 199.")))
                .matches("bench.json, (199|200)\\.\\d mm - Foldwright");
    }

    private void pickAPin() throws Exception {
        MachineScene scene = new MachineScene(Headless.machine("van-bench"));
        scene.place(0.20);
        View view = new TableView(LAYOUT, scene).view(View.Stance.home(), 1, 0, 0);
        var j = scene.lift().joints();
        double z = scene.machine().base().pinHeight() + j.z[1] / 2;
        double x = (j.fixedX[0] + j.slidingX[1]) / 2;
        pointer(view.x(x, -scene.shape().outside(), z), view.y(x, -scene.shape().outside(), z));
        run("xdotool", "click", "1");
        assertThat(title(t -> t.contains("% weight of")))
                .containsPattern("centre pin 1, force across it .*N, .*% weight of ");
        key("Escape");
    }

    private static double time(String title) {
        Matcher m = Pattern.compile("(unfold|replay) ([0-9.]+) s").matcher(title);
        return m.find() ? Double.parseDouble(m.group(2)) : Double.NaN;
    }

    private void click(double x, double y) throws Exception {
        pointer(x, y);
        run("xdotool", "click", "1");
        Thread.sleep(80);
    }

    /** Space computes and runs it; scrub, speed, single rows, the next mark. */
    private void playTheUnfolding() throws Exception {
        key("space");
        assertThat(title(t -> t.contains("running"))).contains("running at real speed");
        key("period", "period", "period");
        assertThat(title(t -> t.contains("10× faster"))).contains("running 10× faster");
        key("space");
        String stood = title(t -> t.contains("unfold") && !t.contains("running"));
        assertThat(time(stood)).isPositive();
        var heights = table(Headless.machine("van-bench")).heights();
        drag(LAYOUT.scaleX() + 20, heights.at(0.05), LAYOUT.scaleX() + 20, heights.at(0.15));
        String scrubbed = title(t -> t.matches(".*(149|150)\\.\\d mm.*"));
        assertThat(scrubbed).matches("bench.json, (149|150)\\.\\d mm, unfold \\d+\\.\\d+ s .*");
        key("k");
        String next = title(t -> time(t) > time(scrubbed));
        assertThat(time(next) - time(scrubbed)).isBetween(0.001, 0.11);
        key("j", "j");
        assertThat(time(title(t -> time(t) < time(next)))).isLessThan(time(next));
        // The springs let go at 109 mm, where the margin is least: the mark before, by key.
        key("shift+m");
        assertThat(title(t -> t.matches(WORST))).matches(WORST);
        drag(LAYOUT.scaleX() + 20, heights.at(0.15), LAYOUT.scaleX() + 20, heights.at(0.20));
        assertThat(title(t -> t.matches(".*(199|200)\\.\\d mm.*"))).contains("unfold");
        // The same by a click on the mark.
        click(LAYOUT.scaleX(), heights.at(0.109));
        assertThat(title(t -> t.matches(WORST))).matches(WORST);
        drag(LAYOUT.scaleX() + 20, heights.at(0.15), LAYOUT.scaleX() + 20, heights.at(0.20));
        assertThat(title(t -> t.matches(".*(199|200)\\.\\d mm.*"))).contains("unfold");
    }

    /** The skew question brings the replay; its controls by mouse. */
    private void playTheReplay() throws Exception {
        key("4");
        String worst = title(t -> t.contains("replay"));
        assertThat(worst).contains("replay");
        key("comma", "comma", "comma", "comma", "comma");
        double play = LAYOUT.scaleX() - 84 + 7 + 34;
        click(play, 592);
        assertThat(title(t -> t.contains("running"))).contains("replay").contains("50× slower");
        click(play, 592);
        String stood = title(t -> !t.contains("running"));
        // Two rows: the first may round to the same thousandth.
        click(play + 34, 592);
        click(play + 34, 592);
        assertThat(time(title(t -> time(t) > time(stood))) - time(stood)).isBetween(5e-4, 0.011);
        drag(LAYOUT.scaleX() + 20, 300, LAYOUT.scaleX() + 20, 500);
        double early = time(title(t -> time(t) < time(stood)));
        assertThat(early).isLessThan(time(stood));
        key("m");
        assertThat(time(title(t -> time(t) != early))).isNotEqualTo(early);
        key("1");
        assertThat(title(t -> t.contains("unfold"))).contains("unfold");
    }

    private void changeANumberUndoAndSave(Path file) throws Exception {
        double y = LAYOUT.rulesTop() + LAYOUT.of(87, 59);
        double left = LAYOUT.left(40, 27);
        // Thread friction is the fourth rule.
        double x = left + 3 * LAYOUT.of(290, 201);
        drag(x + 86, y, x + 30, y);
        assertThat(title(t -> t.contains("(changed)"))).contains("(changed)");
        key("ctrl+z");
        assertThat(title(t -> !t.contains("(changed)"))).doesNotContain("(changed)");
        key("ctrl+y");
        assertThat(title(t -> t.contains("(changed)"))).contains("(changed)");
        key("ctrl+s");
        key("Return");
        assertThat(title(t -> t.startsWith("bench-2.json"))).startsWith("bench-2.json,");
        String before = Files.readString(file);
        String after = Files.readString(folder.resolve("bench-2.json"));
        assertThat(after.lines().count()).isEqualTo(before.lines().count());
        assertThat(after).contains("// Every value carries its unit.");
        double friction =
                MachineFile.read(folder.resolve("bench-2.json"))
                        .machine()
                        .drive()
                        .screw()
                        .nut()
                        .friction();
        assertThat(friction).isBetween(0.06, 0.12);
    }

    private void reloadWhenTheFileChanges(Path file) throws Exception {
        Path now = folder.resolve("bench-2.json");
        String text = Files.readString(now);
        Files.writeString(
                now, text.replace("\"high\": \"46.0 deg\" }", "\"high\": \"30.0 deg\" }"));
        // 2 x 190 mm x sin 30 deg: the deck, at 200 mm, is brought down to the new top.
        assertThat(title(t -> t.contains(" 190.0 mm"))).contains(" 190.0 mm");
        assertThat(file).exists();
    }
}
