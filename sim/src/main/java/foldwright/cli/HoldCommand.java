// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.lift.HoldResult;
import foldwright.lift.HoldStudy;
import foldwright.lift.HourHeld;
import foldwright.machine.Machine;
import foldwright.mechanics.solve.Failure;
import foldwright.study.Assess;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.study.SourceWords;
import foldwright.study.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the lift does with the power off. */
@Command(
        name = "hold",
        description = {
            "Power off: does it stay, sink or spring open at each height; the thread friction at"
                    + " which the answer changes; the droop of one side.",
            "Returns 1 if it does not stay everywhere with the least friction of its thread,"
                    + " creeps in an hour, or this could not be computed."
        },
        footer = {
            "",
            "Example:",
            "  foldwright hold scenes/field-printer.json --csv hold.csv",
            "  foldwright hold scenes/van-bench.json --hour"
        })
final class HoldCommand implements Callable<Integer> {
    private static final int LINES = 12;

    /** What the columns of forces mean. */
    private static final String SIGNS =
            "A force on the nut is positive where it carries the deck. The torque is what is left of"
                    + " it with the least thread friction: negative where friction alone holds.";

    /** Movements below this are told as less than it [mm]. */
    private static final double LEAST_TOLD = 1e-6;

    @Mixin private MachineArgument argument;
    @Mixin private SeriesOutput output;

    @Option(
            names = "--hour",
            description =
                    "Also let it stand for an hour of computed time where holding is hardest, and"
                            + " tell how far the deck moves. Takes some seconds.")
    private boolean hour;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        output.check();
        Machine machine = argument.read();
        Progress progress = new Progress(spec.commandLine().getErr());
        progress.say("hold: every height");
        HoldResult hold = new LiftRuns().hold(machine).orElseThrow();
        Optional<HourHeld> stood =
                hour
                        ? HoldStudy.hour(
                                machine,
                                hold,
                                t -> progress.at((long) t / 60, 60, "minutes of hold"))
                        : Optional.empty();
        progress.done();
        Check check = Assess.hold(machine, hold);
        output.write(() -> csv(hold), () -> Drawings.height(machine, check));
        if (output.json().wanted()) {
            output.json().print(spec, out -> json(out, hold, check, stood));
        } else {
            print(machine, hold, check);
            if (hour) {
                sayHour(stood);
            }
        }
        boolean stays = check.verdict() == Verdict.HOLDS || check.verdict() == Verdict.TIGHT;
        return stays && stood.map(HourHeld::still).orElse(true) ? ExitCode.HOLDS : ExitCode.FAILS;
    }

    private void print(Machine machine, HoldResult hold, Check check) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(Words.headline(machine.name(), check));
        out.println(Prose.forTerminal().of(check.finding()));
        out.println();
        Table table =
                new Table(
                        List.of(
                                "height",
                                "power off",
                                "friction needed",
                                "force on the nut",
                                "torque on the " + SourceWords.of(machine).noun(),
                                "one side lower"),
                        List.of(
                                Table.Side.RIGHT,
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT));
        int step = Math.max(1, hold.points().size() / LINES);
        int last = hold.points().size() - 1;
        for (int i = 0; i <= last; i++) {
            HoldResult.Point p = hold.points().get(i);
            if (i % step != 0 && i != last && hold.worst().filter(p::equals).isEmpty()) {
                continue;
            }
            table.row(
                    Numerals.fixed(Shown.MILLIMETRE.fromSi(p.height()), 1) + " mm",
                    p.verdict().words(),
                    Numerals.number(p.frictionNeeded()),
                    Numerals.with(p.nutForce(), Shown.NEWTON),
                    Numerals.with(p.driveTorque(), Shown.NEWTON_METRE),
                    Numerals.with(Math.abs(p.droop()), Shown.MILLIMETRE));
        }
        out.print(table.text(Prose.forTerminal()));
        out.println(Prose.forTerminal().of(SIGNS));
        out.flush();
    }

    private void sayHour(Optional<HourHeld> stood) {
        PrintWriter out = spec.commandLine().getOut();
        out.println();
        out.println(
                Prose.forTerminal()
                        .of(
                                stood.map(HoldCommand::words)
                                        .orElse(
                                                "No hour was computed: it does not stay everywhere"
                                                        + " with the least friction of its"
                                                        + " thread.")));
        out.flush();
    }

    private static String words(HourHeld h) {
        String where =
                "at "
                        + Numerals.fixed(Shown.MILLIMETRE.fromSi(h.height()), 0)
                        + " mm, thread friction "
                        + Numerals.number(h.threadFriction());
        if (h.failure().isPresent()) {
            return "An hour of hold "
                    + where
                    + " could not be computed to its end: "
                    + h.failure().get().message()
                    + ".";
        }
        double millimetres = Shown.MILLIMETRE.fromSi(Math.abs(h.drift()));
        String drift =
                millimetres < LEAST_TOLD
                        ? "less than " + Numerals.given(LEAST_TOLD)
                        : Numerals.number(millimetres);
        return "In an hour of hold "
                + where
                + ", computed in time, the deck moves "
                + drift
                + " mm; "
                + Numerals.given(Shown.MILLIMETRE.fromSi(HourHeld.ALLOWED))
                + " mm counts as standing still. Wear and shaking are not in it.";
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
                            p.verdict().words(),
                            Csv.number(p.frictionNeeded()),
                            Csv.number(p.nutForce()),
                            Csv.number(p.driveTorque()),
                            Csv.number(p.detent()),
                            Csv.number(Shown.MILLIMETRE.fromSi(p.droop()))));
        }
        return csv.text();
    }

    private static void json(
            JsonGenerator out, HoldResult hold, Check check, Optional<HourHeld> hour)
            throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", hold.machine());
        out.writeStringField("units", "SI");
        out.writeFieldName("check");
        CheckJson.check(out, check);
        CheckJson.number(out, "flipFriction", hold.flipFriction().orElse(Double.NaN));
        if (hour.isPresent()) {
            HourHeld h = hour.get();
            out.writeObjectFieldStart("hour");
            CheckJson.number(out, "height", h.height());
            CheckJson.number(out, "threadFriction", h.threadFriction());
            CheckJson.number(out, "drift", h.drift());
            CheckJson.number(out, "allowed", HourHeld.ALLOWED);
            failure(out, h.failure());
            out.writeEndObject();
        }
        out.writeArrayFieldStart("points");
        for (HoldResult.Point p : hold.points()) {
            out.writeStartObject();
            CheckJson.number(out, "height", p.height());
            out.writeStringField("verdict", p.verdict().words());
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
            out.writeStringField("end", r.end().words());
            failure(out, r.failure());
            out.writeEndObject();
        }
        out.writeEndObject();
    }

    private static void failure(JsonGenerator out, Optional<Failure> failure) throws IOException {
        if (failure.isPresent()) {
            out.writeStringField("failure", failure.get().message());
        }
    }
}
