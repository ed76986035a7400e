// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.proof.Proof;
import foldwright.proof.ProofChapter;
import foldwright.proof.ProofValue;
import foldwright.study.Numerals;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Recomputes published values and prints both. */
@Command(
        name = "proof",
        description = {
            "Recomputes published values (standards, handbooks, benchmarks) and prints each beside"
                    + " its source.",
            "Returns 1 if one of them is missed."
        },
        footer = {"", "Example:", "  foldwright proof", "  foldwright proof --only screws --json"})
final class ProofCommand implements Callable<Integer> {
    @Option(
            names = "--only",
            paramLabel = "WORD",
            description = "Only chapters or values whose name holds this word.")
    private String only = "";

    @Mixin private JsonOption json;

    @Spec private CommandSpec spec;

    /** Width of a page from which a value takes one line. */
    private static final int BESIDE = 120;

    private static final List<String> NUMBERS =
            List.of("", "computed", "published", "unit", "off by", "allowed", "source");

    private static final List<Table.Side> NUMBER_SIDES =
            List.of(
                    Table.Side.LEFT,
                    Table.Side.RIGHT,
                    Table.Side.RIGHT,
                    Table.Side.LEFT,
                    Table.Side.RIGHT,
                    Table.Side.RIGHT,
                    Table.Side.RIGHT);

    @Override
    public Integer call() throws IOException {
        Progress progress = new Progress(spec.commandLine().getErr());
        List<ProofValue> values = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        List<ProofChapter> chapters = Proof.chapters();
        int done = 0;
        for (ProofChapter chapter : chapters) {
            progress.say(
                    "proof: " + chapter.title() + ", chapter " + ++done + " of " + chapters.size());
            List<ProofValue> found = matching(chapter);
            if (!found.isEmpty()) {
                values.addAll(found);
                text.append(text.isEmpty() ? "" : "\n").append(chapter.title()).append('\n');
                text.append(table(found));
            }
        }
        progress.done();
        if (values.isEmpty()) {
            throw new BadInput(nothing(chapters));
        }
        if (json.wanted()) {
            json.print(spec, out -> write(out, values));
        } else {
            spec.commandLine().getOut().print(text + "\n" + summary(values));
        }
        return values.stream().allMatch(ProofValue::pass) ? ExitCode.HOLDS : ExitCode.FAILS;
    }

    private List<ProofValue> matching(ProofChapter chapter) {
        String word = only.toLowerCase(Locale.ROOT);
        if (chapter.title().toLowerCase(Locale.ROOT).contains(word)) {
            return chapter.compute();
        }
        return chapter.compute().stream()
                .filter(v -> v.id().toLowerCase(Locale.ROOT).contains(word))
                .toList();
    }

    private String nothing(List<ProofChapter> chapters) {
        return "no chapter or value holds the word \""
                + only
                + "\"; chapters: "
                + String.join(", ", chapters.stream().map(ProofChapter::title).toList());
    }

    private static String table(List<ProofValue> values) {
        List<String> sources = values.stream().map(ProofValue::source).distinct().toList();
        Prose page = Prose.forTerminal();
        StringBuilder text = new StringBuilder();
        if (page.width() < BESIDE) {
            below(values, sources, page, text);
        } else {
            text.append(beside(values, sources).text(page));
        }
        for (String source : sources) {
            text.append(page.of(mark(sources, source) + " ", source)).append('\n');
        }
        return text.toString();
    }

    /** One line a value, its name first. */
    private static Table beside(List<ProofValue> values, List<String> sources) {
        List<String> heads = new ArrayList<>(NUMBERS);
        List<Table.Side> sides = new ArrayList<>(NUMBER_SIDES);
        heads.add(1, "value");
        sides.add(1, Table.Side.LEFT);
        Table table = new Table(heads, sides);
        for (ProofValue v : values) {
            List<String> cells = numbers(v, sources);
            cells.add(1, v.id());
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    /** Two lines a value, for a narrow page: the name, and below it the numbers. */
    private static void below(
            List<ProofValue> values, List<String> sources, Prose page, StringBuilder text) {
        Table table = new Table(NUMBERS, NUMBER_SIDES);
        values.forEach(v -> table.row(numbers(v, sources).toArray(String[]::new)));
        List<String> lines = table.text().lines().toList();
        text.append(lines.get(0)).append('\n');
        for (int i = 0; i < values.size(); i++) {
            text.append(page.of("", values.get(i).id())).append('\n');
            text.append(lines.get(i + 1)).append('\n');
        }
    }

    private static List<String> numbers(ProofValue v, List<String> sources) {
        return new ArrayList<>(
                List.of(
                        v.pass() ? "met" : "MISSED",
                        number(v.computed()),
                        number(v.published()),
                        v.unit().equals("1") ? "" : v.unit(),
                        size(v, v.deviation()),
                        size(v, v.tolerance()),
                        mark(sources, v.source())));
    }

    /** Each source is written out once, below the values that have its number. */
    private static String mark(List<String> sources, String source) {
        return "[" + (sources.indexOf(source) + 1) + "]";
    }

    private static String number(double value) {
        int whole = value == 0 ? 1 : (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        return Numerals.fixed(value, Math.max(0, Math.min(12, 6 - whole)));
    }

    private static String size(ProofValue v, double size) {
        if (v.kind() == ProofValue.Kind.ABSOLUTE) {
            return Numerals.number(size);
        }
        return size < 1e-6
                ? String.format(Locale.ROOT, "%.0e", size)
                : Numerals.number(100 * size) + "%";
    }

    private static String summary(List<ProofValue> values) {
        long met = values.stream().filter(ProofValue::pass).count();
        return met + " of " + values.size() + " published values met\n";
    }

    private static void write(JsonGenerator out, List<ProofValue> values) throws IOException {
        out.writeStartArray();
        for (ProofValue v : values) {
            out.writeStartObject();
            out.writeStringField("id", v.id());
            out.writeNumberField("computed", v.computed());
            out.writeNumberField("published", v.published());
            out.writeStringField("unit", v.unit());
            out.writeNumberField("deviation", v.deviation());
            out.writeNumberField("tolerance", v.tolerance());
            out.writeStringField("kind", v.kind().name().toLowerCase(Locale.ROOT));
            out.writeStringField("source", v.source());
            out.writeBooleanField("pass", v.pass());
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
