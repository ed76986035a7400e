// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.gantry.limits.Criterion;
import foldwright.gantry.limits.Heading;
import foldwright.gantry.limits.LimitPoint;
import foldwright.gantry.limits.RestSkew;
import foldwright.gantry.model.BeltMass;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import foldwright.study.GantryLimits;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.study.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The largest acceleration of the gantry and what sets it. */
@Command(
        name = "limits",
        description = {
            "The largest acceleration of the gantry that keeps every limit, by direction and place,"
                    + " and what sets it.",
            "Returns 1 if the acceleration of the machine file is larger somewhere."
        },
        footer = {"", "Example:", "  foldwright limits scenes/class-plotter.json --csv limits.csv"})
final class LimitsCommand implements Callable<Integer> {
    @Mixin private MachineArgument argument;
    @Mixin private JsonOption json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Write every place and direction to FILE, units in the header.")
    private Path csv;

    @Option(
            names = "--svg",
            paramLabel = "FILE",
            description = "Draw the largest acceleration by direction to FILE.")
    private Path svg;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (csv != null) {
            Outputs.check(csv);
        }
        if (svg != null) {
            Outputs.check(svg);
        }
        Machine machine = argument.read();
        Gantry gantry =
                machine.gantry()
                        .orElseThrow(
                                () ->
                                        new BadInput(
                                                argument.file()
                                                        + ": has no gantry to limit; its key is \"gantry\", see docs/machine-file.md and"
                                                        + " scenes/class-plotter.json"));
        Progress progress = new Progress(spec.commandLine().getErr());
        progress.say("limits: every place and direction");
        machine.gantry().ifPresent(g -> SoundGantry.of(argument.file(), g));
        GantryLimits limits = new GantryLimits(machine);
        List<LimitPoint> points = limits.map();
        progress.done();
        Outputs outputs = new Outputs();
        if (csv != null) {
            outputs.add(csv, csv(points));
        }
        if (svg != null) {
            outputs.add(
                    svg, Drawings.rose(machine.name(), limits.plot(GantryLimits.least(points))));
        }
        outputs.write();
        if (json.wanted()) {
            json.print(spec, out -> json(out, machine, limits, points));
        } else {
            print(machine, limits, points);
        }
        double asked = gantry.moves().acceleration();
        return points.stream().allMatch(p -> p.acceleration() >= asked)
                ? ExitCode.HOLDS
                : ExitCode.FAILS;
    }

    private void print(Machine machine, GantryLimits limits, List<LimitPoint> points) {
        PrintWriter out = spec.commandLine().getOut();
        double asked = machine.gantry().orElseThrow().moves().acceleration();
        out.println(
                machine.name()
                        + ": "
                        + Numerals.with(asked, Shown.METRE_PER_SECOND_SQUARED)
                        + " is asked for");
        out.println();
        Table table =
                new Table(
                        List.of("direction", "largest", "", "set by", "carriage at x, y"),
                        List.of(
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.LEFT,
                                Table.Side.LEFT,
                                Table.Side.RIGHT));
        for (Map.Entry<Heading, LimitPoint> e : GantryLimits.least(points).entrySet()) {
            LimitPoint p = e.getValue();
            table.row(
                    e.getKey().signed(),
                    Numerals.with(p.acceleration(), Shown.METRE_PER_SECOND_SQUARED),
                    Words.verdict(Verdict.of(p.acceleration() / asked)),
                    p.setBy().words(),
                    place(p));
        }
        out.print(table.text(Prose.forTerminal()));
        out.println();
        RestSkew rest = limits.rest();
        out.println(
                Prose.forTerminal()
                        .of(
                                "at rest the bridge skews "
                                        + Numerals.with(Math.abs(rest.settled()), Shown.MILLIMETRE)
                                        + ": squareness "
                                        + Numerals.with(
                                                Math.abs(rest.squareness()), Shown.MILLIMETRE)
                                        + ", unequal belts "
                                        + Numerals.with(Math.abs(rest.tension()), Shown.MILLIMETRE)
                                        + ", play to each side "
                                        + Numerals.with(rest.play(), Shown.MILLIMETRE)));
        out.println();
        out.print(ModeWords.table(limits.modes()));
        out.println();
        playAlone(machine, rest).ifPresent(n -> out.println(Prose.forTerminal().of(n)));
        notes(machine, limits).forEach(n -> out.println(Prose.forTerminal().of(n)));
        out.flush();
    }

    /** Why a bridge that may rattle further than is allowed has no acceleration at all. */
    private static Optional<String> playAlone(Machine machine, RestSkew rest) {
        OptionalDouble skew = machine.limits().skew();
        return skew.isPresent() && rest.play() > skew.getAsDouble()
                ? Optional.of(
                        "The play alone, "
                                + Numerals.with(rest.play(), Shown.MILLIMETRE)
                                + " to each side, is more than the skew of "
                                + Numerals.with(skew.getAsDouble(), Shown.MILLIMETRE)
                                + " allowed: the least push uses it up, so no acceleration is small"
                                + " enough. Preloaded or longer blocks take the play away.")
                : Optional.empty();
    }

    /** What the numbers hold and leave out. */
    private static List<String> notes(Machine machine, GantryLimits limits) {
        BeltMass belts = limits.belts();
        return List.of(
                "Belts move with "
                        + grams(belts.alongBridge())
                        + " along the bridge, "
                        + grams(belts.racking())
                        + " of it pulling at its ends, and "
                        + grams(belts.alongRails())
                        + " along the rails; sums by hand leave that out, and the idlers.",
                "Quasi-static, no friction: ringing is not in it; foldwright replay shows both. "
                        + DeckWords.fixed(machine));
    }

    private static String grams(double kilograms) {
        return Numerals.fixed(1e3 * kilograms, 1) + "\u00a0g";
    }

    private static double margin(Machine machine, LimitPoint p) {
        return p.acceleration() / machine.gantry().orElseThrow().moves().acceleration();
    }

    private static String place(LimitPoint p) {
        return Numerals.fixed(Shown.MILLIMETRE.fromSi(p.x()), 0)
                + ", "
                + Numerals.fixed(Shown.MILLIMETRE.fromSi(p.y()), 0)
                + " mm";
    }

    private static String csv(List<LimitPoint> points) {
        Csv csv =
                new Csv(
                        List.of(
                                "x [mm]",
                                "y [mm]",
                                "direction",
                                "largest acceleration [m/s²]",
                                "set by",
                                "skew end to end [mm]",
                                "tool error [mm]"));
        for (LimitPoint p : points) {
            csv.row(
                    List.of(
                            Csv.number(Shown.MILLIMETRE.fromSi(p.x())),
                            Csv.number(Shown.MILLIMETRE.fromSi(p.y())),
                            p.heading().word(),
                            Csv.number(p.acceleration()),
                            p.setBy().words(),
                            Csv.number(Shown.MILLIMETRE.fromSi(p.state().endToEnd())),
                            Csv.number(Shown.MILLIMETRE.fromSi(p.state().error().total().size()))));
        }
        return csv.text();
    }

    private static void json(
            JsonGenerator out, Machine machine, GantryLimits limits, List<LimitPoint> points)
            throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", machine.name());
        out.writeStringField("units", "SI");
        CheckJson.number(out, "asked", machine.gantry().orElseThrow().moves().acceleration());
        RestSkew rest = limits.rest();
        out.writeObjectFieldStart("skewAtRest");
        CheckJson.number(out, "settled", rest.settled());
        CheckJson.number(out, "squareness", rest.squareness());
        CheckJson.number(out, "unequalBelts", rest.tension());
        CheckJson.number(out, "playToEachSide", rest.play());
        out.writeEndObject();
        BeltMass belts = limits.belts();
        out.writeObjectFieldStart("beltMass");
        CheckJson.number(out, "alongBridge", belts.alongBridge());
        CheckJson.number(out, "alongRails", belts.alongRails());
        CheckJson.number(out, "racking", belts.racking());
        out.writeEndObject();
        ModeWords.json(out, limits.modes());
        out.writeObjectFieldStart("least");
        for (LimitPoint p : GantryLimits.least(points).values()) {
            out.writeObjectFieldStart(p.heading().word());
            CheckJson.number(out, "acceleration", p.acceleration());
            out.writeStringField("setBy", p.setBy().words());
            CheckJson.number(out, "x", p.x());
            CheckJson.number(out, "y", p.y());
            out.writeStringField("verdict", Verdict.of(margin(machine, p)).word());
            out.writeEndObject();
        }
        out.writeEndObject();
        out.writeArrayFieldStart("points");
        for (LimitPoint p : points) {
            out.writeStartObject();
            CheckJson.number(out, "x", p.x());
            CheckJson.number(out, "y", p.y());
            out.writeStringField("direction", p.heading().word());
            CheckJson.number(out, "acceleration", p.acceleration());
            out.writeStringField("setBy", p.setBy().words());
            CheckJson.number(out, "skew", p.state().endToEnd());
            CheckJson.number(out, "toolError", p.state().error().total().size());
            out.writeObjectFieldStart("use");
            for (Map.Entry<Criterion, Double> u : p.utilisation().entrySet()) {
                CheckJson.number(out, u.getKey().words(), u.getValue());
            }
            out.writeEndObject();
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }
}
