// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.Finding;
import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.study.Assess;
import foldwright.study.Assessment;
import foldwright.study.Check;
import foldwright.study.CurveTrust;
import foldwright.study.Numerals;
import foldwright.study.Runs;
import foldwright.study.Sentences;
import foldwright.study.Shown;
import foldwright.study.SourceWords;
import foldwright.study.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Drive force, torque and margin over height. */
@Command(
        name = "curve",
        description = {
            "Foot force, motor torque and margin over the height, raising and lowering, with the"
                    + " shares of every cause.",
            "Returns 1 if the motor cannot move the lift somewhere."
        },
        footer = {
            "",
            "Columns of the CSV file: direction, height [mm], foot force [N], motor torque [N·m],",
            "available torque [N·m], margin [1], then more.",
            "",
            "Example:",
            "  foldwright curve scenes/van-bench.json --csv curve.csv --svg curve.svg"
        })
final class CurveCommand implements Callable<Integer> {
    /** Lines printed for each direction; the file has all. */
    private static final int LINES = 12;

    @Mixin private MachineArgument argument;
    @Mixin private SeriesOutput output;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        output.check();
        Machine machine = argument.read();
        Runs runs = new LiftRuns();
        ForceCurve curve = runs.curve(machine);
        Check motor = Assess.motor(machine, curve);
        List<Assessment.Trust> trust = CurveTrust.of(curve);
        output.write(() -> CurveFiles.csv(curve), () -> Drawings.height(machine, motor));
        if (output.json().wanted()) {
            output.json().print(spec, out -> CurveFiles.json(out, curve, motor, trust));
        } else {
            print(machine, curve, motor, trust);
        }
        return motor.verdict() == Verdict.FAILS || motor.verdict() == Verdict.UNKNOWN
                ? ExitCode.FAILS
                : ExitCode.HOLDS;
    }

    private void print(
            Machine machine, ForceCurve curve, Check motor, List<Assessment.Trust> trust) {
        PrintWriter out = spec.commandLine().getOut();
        Prose page = Prose.forTerminal();
        out.println(Words.headline(machine.name(), motor));
        out.println(page.of(motor.finding()));
        for (Direction way : Direction.values()) {
            out.println();
            out.print(table(SourceWords.of(machine).noun(), curve, way, motor));
        }
        motor.grounds().split().ifPresent(s -> out.print("\n" + SplitWords.of(s)));
        List<Finding> findings = curve.findings();
        if (!findings.isEmpty()) {
            out.println();
            findings.forEach(f -> out.println(page.of("· ", Sentences.of(f.sentence()))));
        }
        out.println();
        trust.forEach(t -> out.println(page.of(t.run() + ": " + t.words())));
        out.flush();
    }

    private static String table(String source, ForceCurve curve, Direction way, Check motor) {
        Table table =
                new Table(
                        List.of(
                                way.label(),
                                "height",
                                "foot force",
                                source + " torque",
                                "available",
                                "margin"),
                        List.of(
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT));
        List<CurvePoint> points = curve.points(way);
        int worst = -1;
        for (int i = 0; i < points.size(); i++) {
            worst = worst < 0 || points.get(i).margin() < points.get(worst).margin() ? i : worst;
        }
        double holdsFrom = motor.outcome().holdsFrom();
        int step = Math.max(1, points.size() / LINES);
        for (int i = 0; i < points.size(); i++) {
            if (i % step == 0 || i == worst || i == points.size() - 1) {
                CurvePoint p = points.get(i);
                Verdict v = Verdict.of(p.margin(), holdsFrom);
                table.row(
                        i == worst ? "worst →" : "",
                        Numerals.fixed(Shown.MILLIMETRE.fromSi(p.height()), 1) + " mm",
                        Numerals.with(p.footForce(), Shown.NEWTON),
                        Numerals.with(p.motor().needed(), Shown.NEWTON_METRE),
                        Numerals.with(p.motor().available(), Shown.NEWTON_METRE),
                        Numerals.margin(p.margin()) + " " + Words.verdict(v));
            }
        }
        return table.text(Prose.forTerminal());
    }
}
