// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Broken machine files, each with the problems it must be refused for beside it: code and full text
 * of every message.
 */
class BadFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/bad");

    /** What a schema cannot say, or says less strictly than the reader; see the documentation. */
    private static final Set<ProblemCode> READER_ONLY =
            EnumSet.of(
                    ProblemCode.CONTRADICTION,
                    ProblemCode.DUPLICATE_KEY,
                    ProblemCode.OUT_OF_RANGE,
                    ProblemCode.UNKNOWN_NAME,
                    ProblemCode.UNKNOWN_PATH);

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static String problems(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        String name = file.getFileName().toString();
        BadMachineFile refused =
                catchThrowableOfType(BadMachineFile.class, () -> MachineFile.read(name, bytes));
        assertThat(refused).as(name).isNotNull();
        return refused.problems().stream()
                .map(problem -> problem.code() + "\n  " + problem.text() + "\n")
                .collect(Collectors.joining());
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr"})
    void everyBadFileIsRefusedWithItsMessages(String language) throws IOException {
        Locale before = Locale.getDefault();
        Locale.setDefault(new Locale(language));
        try {
            for (Path file : files()) {
                Path expected =
                        FOLDER.resolve(file.getFileName().toString().replace(".json", ".txt"));
                refresh(expected, problems(file));
                assertThat(problems(file))
                        .as(file.toString())
                        .isEqualTo(Files.readString(expected));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /**
     * After a message has changed, run once with {@code -Dfoldwright.refresh=true} and read what
     * changed.
     */
    private static void refresh(Path expected, String problems) throws IOException {
        if (Boolean.getBoolean("foldwright.refresh")) {
            WholeFile.write(expected, problems);
        }
    }

    @Test
    void thereAreManyOfThemAndTheyCoverEveryCode() throws IOException {
        EnumSet<ProblemCode> seen = EnumSet.noneOf(ProblemCode.class);
        for (Path file : files()) {
            problems(file)
                    .lines()
                    .filter(line -> !line.startsWith(" "))
                    .forEach(line -> seen.add(ProblemCode.valueOf(line)));
        }
        // a file that is missing and one that is too large are tested by themselves
        EnumSet<ProblemCode> others = EnumSet.of(ProblemCode.CANNOT_READ);
        assertThat(files()).hasSizeGreaterThanOrEqualTo(150);
        assertThat(seen).containsAll(EnumSet.complementOf(others));
    }

    /**
     * Every bad file that is JSON at all fails the schema too, or has a fault no schema can see.
     */
    @Test
    void schemaRefusesWhatItCanExpress() throws IOException {
        int refused = 0;
        for (Path file : files()) {
            Set<ProblemCode> codes =
                    problems(file)
                            .lines()
                            .filter(line -> !line.startsWith(" "))
                            .map(ProblemCode::valueOf)
                            .collect(Collectors.toSet());
            if (isJson(file)) {
                String text = Files.readString(file, StandardCharsets.UTF_8);
                boolean passes = MachineSchemaTest.problems(text).isEmpty();
                // of doubled keys a validator only sees one
                boolean doubled = codes.contains(ProblemCode.DUPLICATE_KEY);
                refused += passes ? 0 : 1;
                boolean missed = passes && !doubled && !READER_ONLY.containsAll(codes);
                assertThat(missed).as(file.toString()).isFalse();
            }
        }
        assertThat(refused).isGreaterThan(100);
    }

    private static boolean isJson(Path file) throws IOException {
        try {
            MachineSchemaTest.problems(Files.readString(file, StandardCharsets.UTF_8));
            return true;
        } catch (JsonProcessingException | java.nio.charset.MalformedInputException e) {
            return false;
        }
    }

    @Test
    void fileThatIsMissingOrAFolderIsSaidSo(@TempDir Path folder) {
        BadMachineFile missing =
                catchThrowableOfType(
                        BadMachineFile.class, () -> MachineFile.read(folder.resolve("no.json")));
        assertThat(missing.problems().get(0).code()).isEqualTo(ProblemCode.CANNOT_READ);
        assertThat(missing).hasMessageEndingWith("no.json: no such file");
        BadMachineFile isFolder =
                catchThrowableOfType(BadMachineFile.class, () -> MachineFile.read(folder));
        assertThat(isFolder).hasMessageEndingWith(": is a folder; allowed: a machine file");
    }

    @Test
    void fileOfManyMegabytesIsNotRead() {
        byte[] bytes = new byte[5 * 1024 * 1024];
        java.util.Arrays.fill(bytes, (byte) ' ');
        BadMachineFile refused =
                catchThrowableOfType(BadMachineFile.class, () -> MachineFile.read("big", bytes));
        assertThat(refused).hasMessage("big: larger than 4 MB; allowed: a machine file");
    }
}
