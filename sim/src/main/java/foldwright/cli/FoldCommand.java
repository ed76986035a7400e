// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.lift.Direction;
import foldwright.lift.FoldResult;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.run.FoldRecord;
import foldwright.study.FoldPlots;
import foldwright.study.Numerals;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Unfolding or folding in time. */
@Command(
        name = "fold",
        description = {
            "Unfolds or folds in time with the motor's real commands: ramp, stall, lost steps,"
                    + " springs letting go, latch, stops.",
            "Returns 1 if it does not arrive where it was sent, or could not be computed."
        },
        footer = {
            "",
            "Example:",
            "  foldwright fold scenes/van-bench.json --direction lowering --svg fold.svg",
            "  foldwright fold scenes/van-bench.json --run unfold.json"
        })
final class FoldCommand implements Callable<Integer> {
    @Mixin private MachineArgument argument;
    @Mixin private SeriesOutput output;

    @Option(
            names = "--direction",
            paramLabel = "WAY",
            defaultValue = "raising",
            description = "raising or lowering (default: ${DEFAULT-VALUE}).")
    private Direction direction;

    @Mixin private RunOption record;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        output.check();
        record.check();
        MachineFile file = argument.readFile();
        Machine machine = file.machine();
        Progress progress = new Progress(spec.commandLine().getErr());
        FoldResult run = new LiftRuns().fold(machine, direction, progress);
        progress.done();
        output.write(
                () -> FoldFiles.csv(run),
                () -> Drawings.time(machine.name(), FoldPlots.of(machine, run)));
        record.write(() -> FoldRecord.of(file, run));
        if (output.json().wanted()) {
            output.json().print(spec, out -> FoldFiles.json(out, run));
        } else {
            print(machine, run);
        }
        return run.outcome() == FoldResult.Outcome.ARRIVED ? ExitCode.HOLDS : ExitCode.FAILS;
    }

    private void print(Machine machine, FoldResult run) {
        PrintWriter out = spec.commandLine().getOut();
        Prose page = Prose.forTerminal();
        out.println(
                run.machine()
                        + ", "
                        + run.direction().label()
                        + ": "
                        + Words.verdict(FoldPlots.verdict(run))
                        + ", "
                        + run.outcome().words());
        out.println();
        Table events =
                new Table(List.of("time", "event"), List.of(Table.Side.RIGHT, Table.Side.LEFT));
        for (FoldResult.Event e : run.events()) {
            events.row(Numerals.fixed(e.time(), 2) + " s", e.sentence());
        }
        out.print(events.text(page));
        out.println();
        boolean byHand = machine.drive().byHand();
        out.print(ledger(run.ledger(), byHand ? "work of the hand" : "work of the motors"));
        out.println();
        FoldFiles.trust(run).forEach(t -> out.println(page.of(t.run() + ": " + t.words())));
        out.flush();
    }

    private static String ledger(FoldResult.Ledger l, String work) {
        Table table = new Table(List.of("energy", "J"), List.of(Table.Side.LEFT, Table.Side.RIGHT));
        table.row(work, Numerals.fixed(l.motor(), 3));
        table.row("gained by weights", Numerals.fixed(l.potential(), 3));
        table.row("gained by springs", Numerals.fixed(l.springs(), 3));
        table.row("gained by motion", Numerals.fixed(l.kinetic(), 3));
        table.row("friction heat", Numerals.fixed(l.friction(), 3));
        table.row("damping", Numerals.fixed(l.damping(), 3));
        table.row("closing error", Numerals.fixed(l.closingError(), 6));
        return table.text(Prose.forTerminal());
    }
}
