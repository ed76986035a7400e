// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.Machine;
import foldwright.report.Report;
import foldwright.study.Answer;
import foldwright.study.Assess;
import foldwright.study.Assessment;
import foldwright.study.Caution;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Question;
import foldwright.study.Remedy;
import foldwright.study.Verdict;
import foldwright.study.order.OrderList;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Every check on one machine, and the report. */
@Command(
        name = "assess",
        description = {
            "Runs every check, prints the verdicts and writes the report.",
            "Returns 1 if one of them fails."
        },
        footer = {"", "Example:", "  foldwright assess scenes/van-bench.json -o report"})
final class AssessCommand implements Callable<Integer> {
    @Mixin private MachineArgument argument;
    @Mixin private JsonOption json;

    @Option(
            names = "-o",
            paramLabel = "DIR",
            description = "Folder for report.html and result.json; made if there is none.")
    private Path folder;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (folder != null) {
            Outputs.checkFolder(folder);
        }
        Machine machine = argument.read();
        machine.gantry().ifPresent(g -> SoundGantry.of(argument.file(), g));
        Progress progress = new Progress(spec.commandLine().getErr());
        Assessment a = Assess.machine(machine, new LiftRuns(), w -> progress.say("assess: " + w));
        write(a);
        progress.done();
        if (json.wanted()) {
            json.print(spec, out -> CheckJson.assessment(out, a));
        } else {
            print(a);
        }
        return a.verdict() == Verdict.FAILS ? ExitCode.FAILS : ExitCode.HOLDS;
    }

    private void write(Assessment a) throws IOException {
        if (folder == null) {
            return;
        }
        Outputs outputs = new Outputs();
        outputs.add(folder.resolve("report.html"), Report.html(a, LocalDate.now()));
        outputs.add(
                folder.resolve("result.json"),
                JsonOption.text(out -> CheckJson.assessment(out, a)));
        outputs.write();
    }

    private void print(Assessment a) {
        PrintWriter out = spec.commandLine().getOut();
        Prose page = Prose.forTerminal();
        out.println(a.machine().name());
        out.println();
        Table table =
                new Table(
                        List.of("", "", "is", "allowed", "margin", "worst at"),
                        List.of(
                                Table.Side.LEFT,
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.LEFT));
        for (Answer answer : a.answers()) {
            String needs = answer.checks().isEmpty() ? answer.question().needs() : "";
            table.row(
                    answer.question().words(), Words.verdict(answer.verdict()), "", "", "", needs);
            for (Check c : answer.checks()) {
                Outcome o = c.outcome();
                table.row(
                        "  " + c.title(),
                        Words.verdict(c.verdict()),
                        o.required().text(),
                        o.available().text(),
                        Numerals.margin(o),
                        o.worst().text());
            }
        }
        out.print(table.text(page));
        out.println();
        a.headline().speaker().ifPresent(c -> out.print(speech(c, page)));
        out.println();
        a.checks().stream()
                .filter(c -> c.question() == Question.ORDER)
                .forEach(c -> c.grounds().split().ifPresent(s -> out.println(SplitWords.of(s))));
        for (Caution c : a.cautions()) {
            String title = c.title().toLowerCase(Locale.ROOT);
            out.println(page.of("caution, " + title + ": " + c.words()));
        }
        out.println("Local codes and licensed practice apply.");
        out.println();
        OrderWords order = new OrderWords(OrderList.of(a));
        out.print(order.table().text(page));
        out.println(page.of(order.open()));
        out.println(page.of(order.unlisted()));
        out.println();
        a.trust().forEach(t -> out.println(page.of(t.run() + ": " + t.words())));
        if (folder != null) {
            out.println("wrote " + folder.resolve("report.html") + " and result.json");
        }
        out.flush();
    }

    /** What the check found and what would change it, best last, margins below one another. */
    private static String speech(Check check, Prose page) {
        String finding = page.of(check.finding()) + "\n";
        if (check.remedies().isEmpty()) {
            return finding;
        }
        Table changes =
                new Table(
                        List.of("  what would change it", "margin"),
                        List.of(Table.Side.LEFT, Table.Side.RIGHT));
        for (Remedy r : check.remedies()) {
            changes.row("  " + r.words(), Numerals.margin(r.outcome()));
        }
        return finding + "\n" + changes.text();
    }
}
