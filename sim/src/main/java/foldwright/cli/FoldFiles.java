// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.lift.FoldResult;
import foldwright.study.Assessment;
import foldwright.study.FoldPlots;
import foldwright.study.Shown;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** A run in time as CSV and JSON. */
final class FoldFiles {
    private FoldFiles() {}

    static List<Assessment.Trust> trust(FoldResult run) {
        return FoldPlots.trust(run);
    }

    static String csv(FoldResult run) {
        Csv csv =
                new Csv(
                        List.of(
                                "time [s]",
                                "height [mm]",
                                "deck speed [mm/s]",
                                "motor torque [N·m]",
                                "pull-out torque [N·m]",
                                "motor speed [rev/s]",
                                "steps lost [1]",
                                "nut force [N]",
                                "droop [mm]"));
        for (FoldResult.Sample s : run.samples()) {
            csv.row(
                    List.of(
                            Csv.number(s.time()),
                            Csv.number(Shown.MILLIMETRE.fromSi(s.height())),
                            Csv.number(Shown.MILLIMETRE_PER_SECOND.fromSi(s.deckSpeed())),
                            Csv.number(s.motor().torque()),
                            Csv.number(s.motor().pullOut()),
                            Csv.number(Shown.REVOLUTION_PER_SECOND.fromSi(s.motor().speed())),
                            Csv.number(s.motor().stepsLost()),
                            Csv.number(s.nutForce()),
                            Csv.number(Shown.MILLIMETRE.fromSi(s.droop()))));
        }
        return csv.text();
    }

    static void json(JsonGenerator out, FoldResult run) throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", run.machine());
        out.writeStringField("units", "SI");
        out.writeStringField("direction", run.direction().label());
        out.writeStringField("outcome", run.outcome().name().toLowerCase(Locale.ROOT));
        out.writeArrayFieldStart("events");
        for (FoldResult.Event e : run.events()) {
            out.writeStartObject();
            out.writeStringField("kind", e.kind().name().toLowerCase(Locale.ROOT));
            CheckJson.number(out, "time", e.time());
            CheckJson.number(out, "height", e.height());
            out.writeStringField("sentence", e.sentence());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("samples");
        for (FoldResult.Sample s : run.samples()) {
            out.writeStartObject();
            CheckJson.number(out, "time", s.time());
            CheckJson.number(out, "height", s.height());
            CheckJson.number(out, "deckSpeed", s.deckSpeed());
            CheckJson.number(out, "motorTorque", s.motor().torque());
            CheckJson.number(out, "pullOutTorque", s.motor().pullOut());
            CheckJson.number(out, "stepsLost", s.motor().stepsLost());
            CheckJson.number(out, "nutForce", s.nutForce());
            CheckJson.number(out, "droop", s.droop());
            out.writeEndObject();
        }
        out.writeEndArray();
        ledger(out, run.ledger());
        convergence(out, run.convergence());
        CheckJson.trust(out, trust(run));
        out.writeEndObject();
    }

    private static void ledger(JsonGenerator out, FoldResult.Ledger l) throws IOException {
        out.writeObjectFieldStart("energy");
        CheckJson.number(out, "motor", l.motor());
        CheckJson.number(out, "potential", l.potential());
        CheckJson.number(out, "springs", l.springs());
        CheckJson.number(out, "kinetic", l.kinetic());
        CheckJson.number(out, "friction", l.friction());
        CheckJson.number(out, "damping", l.damping());
        CheckJson.number(out, "turnedOver", l.turnedOver());
        CheckJson.number(out, "closingError", l.closingError());
        out.writeEndObject();
    }

    private static void convergence(JsonGenerator out, FoldResult.Convergence c)
            throws IOException {
        out.writeObjectFieldStart("convergence");
        CheckJson.number(out, "step", c.step());
        out.writeNumberField("steps", c.steps());
        CheckJson.number(out, "solvesPerStep", c.solves());
        out.writeNumberField("halvedSteps", c.halvedSteps());
        CheckJson.number(out, "worstMargin", c.worstMargin());
        CheckJson.number(out, "marginChangeOnHalving", c.marginChangeOnHalving());
        out.writeEndObject();
    }
}
