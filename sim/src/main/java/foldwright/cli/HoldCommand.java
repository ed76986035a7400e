// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.lift.HoldResult;
import foldwright.machine.Machine;
import foldwright.study.Assess;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.study.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the lift does with the power off. */
@Command(
        name = "hold",
        description = {
            "Power off: does it stay, sink or spring open at each height; the thread friction at"
                    + " which the answer changes; the droop of one side.",
            "Returns 1 if it does not stay everywhere with the least friction of its thread."
        },
        footer = {"", "Example:", "  foldwright hold scenes/field-printer.json --csv hold.csv"})
final class HoldCommand implements Callable<Integer> {
    private static final int LINES = 12;

    @Mixin private MachineArgument argument;
    @Mixin private SeriesOutput output;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        output.check();
        Machine machine = argument.read();
        Progress progress = new Progress(spec.commandLine().getErr());
        progress.say("hold: every height");
        HoldResult hold = new LiftRuns().hold(machine).orElseThrow();
        progress.done();
        Check check = Assess.hold(machine, hold);
        output.write(() -> csv(hold), () -> Drawings.height(machine, check));
        if (output.json().wanted()) {
            output.json().print(spec, out -> json(out, hold, check));
        } else {
            print(machine, hold, check);
        }
        boolean stays = check.verdict() == Verdict.HOLDS || check.verdict() == Verdict.TIGHT;
        return stays ? ExitCode.HOLDS : ExitCode.FAILS;
    }

    private static String word(HoldResult.Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void print(Machine machine, HoldResult hold, Check check) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                machine.name()
                        + ": "
                        + Words.verdict(check.verdict())
                        + ", margin "
                        + Numerals.margin(check.outcome()));
        out.println(Prose.forTerminal().of(check.finding()));
        out.println();
        Table table =
                new Table(
                        List.of(
                                "height",
                                "power off",
                                "friction needed",
                                "force on the nut",
                                "torque on the motor",
                                "one side lower"),
                        List.of(
                                Table.Side.RIGHT,
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT));
        int step = Math.max(1, hold.points().size() / LINES);
        for (int i = 0; i < hold.points().size(); i += step) {
            HoldResult.Point p = hold.points().get(i);
            table.row(
                    Numerals.fixed(Shown.MILLIMETRE.fromSi(p.height()), 1) + " mm",
                    word(p.verdict()),
                    Numerals.number(p.frictionNeeded()),
                    Numerals.with(p.nutForce(), Shown.NEWTON),
                    Numerals.with(p.driveTorque(), Shown.NEWTON_METRE),
                    Numerals.with(Math.abs(p.droop()), Shown.MILLIMETRE));
        }
        out.print(table.text(Prose.forTerminal()));
        out.flush();
    }

    private static String csv(HoldResult hold) {
        Csv csv =
                new Csv(
                        List.of(
                                "height [mm]",
                                "power off",
                                "friction needed [1]",
                                "nut force [N]",
                                "torque on the motor [N·m]",
                                "detent torque [N·m]",
                                "droop [mm]"));
        for (HoldResult.Point p : hold.points()) {
            csv.row(
                    List.of(
                            Csv.number(Shown.MILLIMETRE.fromSi(p.height())),
                            word(p.verdict()),
                            Csv.number(p.frictionNeeded()),
                            Csv.number(p.nutForce()),
                            Csv.number(p.driveTorque()),
                            Csv.number(p.detent()),
                            Csv.number(Shown.MILLIMETRE.fromSi(p.droop()))));
        }
        return csv.text();
    }

    private static void json(JsonGenerator out, HoldResult hold, Check check) throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", hold.machine());
        out.writeStringField("units", "SI");
        out.writeFieldName("check");
        CheckJson.check(out, check);
        CheckJson.number(out, "flipFriction", hold.flipFriction().orElse(Double.NaN));
        out.writeArrayFieldStart("points");
        for (HoldResult.Point p : hold.points()) {
            out.writeStartObject();
            CheckJson.number(out, "height", p.height());
            out.writeStringField("verdict", word(p.verdict()));
            CheckJson.number(out, "frictionNeeded", p.frictionNeeded());
            CheckJson.number(out, "nutForce", p.nutForce());
            CheckJson.number(out, "driveTorque", p.driveTorque());
            CheckJson.number(out, "detent", p.detent());
            CheckJson.number(out, "droop", p.droop());
            out.writeEndObject();
        }
        out.writeEndArray();
        if (hold.runDown().isPresent()) {
            HoldResult.RunDown r = hold.runDown().get();
            out.writeObjectFieldStart("runDown");
            CheckJson.number(out, "from", r.from());
            CheckJson.number(out, "to", r.to());
            CheckJson.number(out, "time", r.time());
            CheckJson.number(out, "topSpeed", r.topSpeed());
            CheckJson.number(out, "arrivalSpeed", r.arrivalSpeed());
            CheckJson.number(out, "energy", r.energy());
            CheckJson.number(out, "threadFriction", r.threadFriction());
            out.writeEndObject();
        }
        out.writeEndObject();
    }
}
