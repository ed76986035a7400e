// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.replay.Replay;
import foldwright.gantry.replay.ReplayResult;
import foldwright.gantry.replay.ReplaySettings;
import foldwright.lift.Direction;
import foldwright.lift.FoldResult;
import foldwright.lift.FoldRun;
import foldwright.lift.LiftSolver;
import foldwright.machine.file.MachineFile;
import foldwright.machine.gantry.Gantry;
import foldwright.motion.Course;
import foldwright.motion.CourseSample;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A run comes back from its file as it went in, and a file that is none says where it errs. */
class RunFileTest {
    private static final Path SCENES = Path.of("..", "scenes");
    private static Run replay;
    private static ReplayResult result;

    @TempDir private Path folder;

    @BeforeAll
    static void replay() throws Exception {
        MachineFile machine = MachineFile.read(SCENES.resolve("class-plotter-skews.json"));
        Gantry gantry = machine.machine().gantry().orElseThrow();
        var model = GantryAssembly.of(gantry);
        ReplayRecorder recorder = new ReplayRecorder();
        Path path = Toolpath.beside(Path.of(machine.name())).orElseThrow();
        try (InputStream in = Files.newInputStream(path)) {
            result =
                    new Replay(model, ReplaySettings.usual(model.layout().travel()))
                            .run(Toolpath.course(path, in, gantry), List.of(recorder));
        }
        replay = recorder.run(machine, "class-plotter.nc", result);
    }

    private Run again(Run run) throws Exception {
        Path file = folder.resolve("run.json");
        RunFile.write(file, run);
        assertThat(RunFile.isRun(file)).isTrue();
        assertThat(Files.list(folder)).containsExactly(file);
        return RunFile.read(file);
    }

    private static void same(Run a, Run b) {
        assertThat(b.kind()).isEqualTo(a.kind());
        assertThat(b.subject()).isEqualTo(a.subject());
        assertThat(b.outcome()).isEqualTo(a.outcome());
        assertThat(b.machine().text()).isEqualTo(a.machine().text());
        assertThat(b.machine().machine()).isEqualTo(a.machine().machine());
        assertThat(b.step()).isCloseTo(a.step(), within(1e-15));
        assertThat(b.table().rows()).isEqualTo(a.table().rows());
        for (RunColumn c : a.table().columns()) {
            double size = Math.max(1e-30, a.table().largest(c));
            for (int r = 0; r < a.table().rows(); r++) {
                assertThat(b.table().at(c, r)).isCloseTo(a.table().at(c, r), within(1e-8 * size));
            }
        }
        assertThat(b.table().sections()).isEqualTo(a.table().sections());
        for (int i = 0; i < a.table().sections().size(); i++) {
            for (int r = 0; r < a.table().rows(); r++) {
                assertThat(b.table().tension(i, r))
                        .isCloseTo(a.table().tension(i, r), within(1e-6));
            }
        }
        assertThat(b.events()).hasSameSizeAs(a.events());
        for (int i = 0; i < a.events().size(); i++) {
            assertThat(b.events().get(i).sentence()).isEqualTo(a.events().get(i).sentence());
            assertThat(b.events().get(i).kind()).isEqualTo(a.events().get(i).kind());
        }
    }

    @Test
    void anUnfoldingComesBack() throws Exception {
        MachineFile machine = MachineFile.read(SCENES.resolve("van-bench.json"));
        FoldResult fold =
                FoldRun.run(machine.machine(), Direction.RAISING, 0.09, 0.13, FoldRun.STEP);
        Run run = FoldRecord.of(machine, fold);
        same(run, again(run));
        RunTable t = run.table();
        assertThat(t.at(RunColumn.HEIGHT, t.end())).isCloseTo(0.13, within(5e-4));
        // Belt 3:1 and a lead of 2 mm: the rotor turns as the feet move, and stays with its field.
        double turned = t.at(RunColumn.MOTOR_ANGLE, t.end()) - t.at(RunColumn.MOTOR_ANGLE, 0);
        double told = t.at(RunColumn.COMMANDED_ANGLE, t.end()) - t.at(RunColumn.COMMANDED_ANGLE, 0);
        double way =
                Math.sqrt(0.19 * 0.19 - 0.045 * 0.045) - Math.sqrt(0.19 * 0.19 - 0.065 * 0.065);
        assertThat(Math.abs(turned)).isCloseTo(3 * 2 * Math.PI * way / 0.002, within(2.0));
        assertThat(turned).isCloseTo(told, within(0.05));
        // The springs let go at 109 mm (by hand); the margin is least there.
        RunEvent worst =
                run.events().stream()
                        .filter(e -> e.kind() == RunEvent.Kind.LOWEST_MARGIN)
                        .findFirst()
                        .orElseThrow();
        assertThat(t.at(RunColumn.HEIGHT, worst.time())).isCloseTo(0.109, within(1e-3));
    }

    @Test
    void aFoldingOntoItsLatchComesBack() throws Exception {
        MachineFile machine = MachineFile.read(SCENES.resolve("van-bench.json"));
        double flat = new LiftSolver(machine.machine()).lowest();
        FoldResult fold =
                FoldRun.run(machine.machine(), Direction.LOWERING, 0.04, flat, FoldRun.STEP);
        Run run = FoldRecord.of(machine, fold);
        assertThat(run.events()).anyMatch(e -> e.kind() == RunEvent.Kind.LATCH_CLOSED);
        same(run, again(run));
    }

    @ParameterizedTest
    @EnumSource(FoldResult.EventKind.class)
    void everyEventOfAFoldHasItsWordInAFile(FoldResult.EventKind kind) {
        assertThat(RunEvent.Kind.valueOf(kind.name()).word()).isNotEmpty();
    }

    @Test
    void aReplayComesBack() throws Exception {
        // The least and the largest tension are those of the sections.
        RunTable t = replay.table();
        assertThat(t.sections()).isNotEmpty();
        for (int r = 0; r < t.rows(); r += 53) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < t.sections().size(); i++) {
                least = Math.min(least, t.tension(i, r));
            }
            assertThat(least).isEqualTo(t.at(RunColumn.SLACKEST, r));
        }
        same(replay, again(replay));
    }

    @Test
    void theWorstMomentsOfAReplayAreKeptExactly() {
        RunTable t = replay.table();
        double error = 0;
        for (int r = 0; r < t.rows(); r++) {
            error =
                    Math.max(
                            error,
                            Math.hypot(t.at(RunColumn.ERROR_X, r), t.at(RunColumn.ERROR_Y, r)));
        }
        assertThat(error).isCloseTo(result.error().peak(), within(1e-12));
        double span = 0.44;
        assertThat(t.largest(RunColumn.SKEW) * span).isCloseTo(result.skew().peak(), within(1e-12));
        int row = t.row(result.error().time());
        assertThat((long) t.at(RunColumn.LINE, row)).isEqualTo(result.error().line());
    }

    @Test
    void whereTheToolIsFollowsFromBridgeCarriageAndSkew() {
        // Tool in the middle of the carriage: command + error = carriage on a turned bridge.
        RunTable t = replay.table();
        for (int r = 0; r < t.rows(); r += 37) {
            double x = t.at(RunColumn.COMMANDED_X, r) + t.at(RunColumn.ERROR_X, r);
            double y = t.at(RunColumn.COMMANDED_Y, r) + t.at(RunColumn.ERROR_Y, r);
            double skew = t.at(RunColumn.SKEW, r);
            double c = t.at(RunColumn.CARRIAGE, r);
            assertThat(c * Math.cos(skew)).isCloseTo(x, within(5e-5));
            assertThat(t.at(RunColumn.BRIDGE, r) + c * Math.sin(skew)).isCloseTo(y, within(5e-5));
        }
    }

    @Test
    void aLongReplayKeepsItsEndsAndABoundedNumberOfRows() throws Exception {
        MachineFile machine = replay.machine();
        Gantry gantry = machine.machine().gantry().orElseThrow();
        var model = GantryAssembly.of(gantry);
        ReplayRecorder recorder = new ReplayRecorder();
        ReplayResult long30 =
                new Replay(model, ReplaySettings.usual(model.layout().travel()))
                        .run(new Resting(30), List.of(recorder));
        RunTable t = recorder.run(machine, "rest", long30).table();
        assertThat(t.rows()).isBetween(ReplayRecorder.MOST / 2, ReplayRecorder.MOST + 2);
        assertThat(t.start()).isZero();
        assertThat(t.end()).isCloseTo(30.2, within(0.01));
    }

    /** A course that stands still. */
    private record Resting(double seconds) implements Course {
        @Override
        public boolean at(double time, CourseSample out) {
            out.x = 0.2;
            out.y = 0.15;
            out.vx = 0;
            out.vy = 0;
            out.line = 0;
            return time < seconds;
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"kind\": \"unfold\" | \"kind\": \"hover\" | kind: found \"hover\"; allowed: unfold, fold, replay",
                "\"subject\" | \"subjekt\" | :4:3: subjekt: unknown key, nearest subject; allowed:",
                "\"step\": \"5 ms\" | \"step\": \"5\" | :6:11: step: found \"5\"; allowed: a time with its unit, such as \"5 s\"",
                "height [mm] | height [kg] | columns[1]: found \"height [kg]\"; allowed: a unit of length, such as \"height [mm]\"",
                "height [mm] | hieght [mm] | columns[1]: found \"hieght [mm]\", nearest height; allowed:",
                "[1,35, | [\"one\",35, | :15:2: rows[1][0]: found one; allowed: a number in s, or null",
                "[1,35, | [-1,35, | rows[1]: found a time before that of the row above; allowed: times in order",
                "[1,35, | [1, | rows[1]: found 10 numbers; allowed: 11 as in columns",
                "spring-let-go | sprung-let-go | events[0].kind: found \"sprung-let-go\", nearest spring-let-go; allowed:",
            })
    void whatIsWrongIsToldWithItsPlace(String good, String bad, String message) throws Exception {
        String text = small();
        assertThat(text).contains(good);
        Path file = folder.resolve("bad.json");
        Files.writeString(file, text.replace(good, bad));
        assertThatThrownBy(() -> RunFile.read(file))
                .isInstanceOf(BadRunFile.class)
                .hasMessageStartingWith(file.toString())
                .hasMessageContaining(message);
    }

    private static String small() {
        MachineFile machine = replay.machine();
        double[] first = {0, 0.034, 0, 0, 0, 0, 0, 0.3, 0, 10, 0};
        double[] second = {1, 0.035, 0.001, 1, 1, 1, 0.1, 0.3, 0, 10, 0};
        return RunFile.text(
                new Run(
                        RunKind.UNFOLD,
                        "",
                        machine,
                        0.005,
                        "arrived",
                        new RunTable(RunKind.UNFOLD.columns(), List.of(first, second)),
                        List.of(
                                new RunEvent(
                                        RunEvent.Kind.SPRING_LET_GO,
                                        0.5,
                                        0,
                                        "A spring lets go."))));
    }

    @Test
    void aFileCutShortOrWithABadMachineIsRefused() throws Exception {
        String text = small();
        Path file = folder.resolve("cut.json");
        Files.writeString(file, text.substring(0, text.length() - 20));
        assertThatThrownBy(() -> RunFile.read(file))
                .isInstanceOf(BadRunFile.class)
                .hasMessageContaining("cut short");
        Files.writeString(file, text.replace("\\\"pinHeight\\\"", "\\\"pinHight\\\""));
        assertThatThrownBy(() -> RunFile.read(file))
                .isInstanceOf(BadRunFile.class)
                .hasMessageContaining("machine: the text of the machine inside cannot be used:")
                .hasMessageContaining("nearest: pinHeight");
        assertThat(RunFile.isRun(SCENES.resolve("van-bench.json"))).isFalse();
        assertThatThrownBy(() -> RunFile.read(folder.resolve("none.json")))
                .hasMessageContaining("no such file");
    }
}
