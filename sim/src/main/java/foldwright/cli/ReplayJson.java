// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.gantry.replay.ChannelResult;
import foldwright.gantry.replay.ReplayResult;
import foldwright.machine.Machine;
import foldwright.motion.IsoReader;
import foldwright.motion.ReadSummary;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A replay's summary as JSON; numbers SI. */
final class ReplayJson {
    private ReplayJson() {}

    static void write(JsonGenerator out, Machine machine, ToolpathArgument toolpath, ReplayResult r)
            throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", machine.name());
        out.writeStringField("toolpath", toolpath.name());
        out.writeStringField("units", "SI");
        CheckJson.number(out, "duration", r.duration());
        out.writeNumberField("steps", r.steps());
        for (ChannelResult c : List.of(r.skew(), r.error(), r.errorX(), r.errorY())) {
            channel(out, c);
        }
        CheckJson.number(out, "leastTension", r.leastTension());
        CheckJson.number(out, "mostTension", r.mostTension());
        CheckJson.number(out, "guideMoment", r.guideMoment());
        CheckJson.number(out, "carriageForce", r.carriageForce());
        CheckJson.number(out, "carriageMoment", r.carriageMoment());
        out.writeArrayFieldStart("motorTorques");
        for (double torque : r.motors()) {
            out.writeNumber(torque);
        }
        out.writeEndArray();
        out.writeObjectFieldStart("events");
        out.writeNumberField("slackSpells", r.events().slackSpells());
        out.writeNumberField("toothJumps", r.events().toothJumps());
        out.writeNumberField("lostSteps", r.events().lostSteps());
        out.writeEndObject();
        skipped(out, toolpath.reader().map(IsoReader::summary));
        out.writeEndObject();
    }

    private static void channel(JsonGenerator out, ChannelResult c) throws IOException {
        out.writeObjectFieldStart(c.name());
        out.writeStringField("unit", c.unit());
        CheckJson.number(out, "worst", c.worst());
        CheckJson.number(out, "time", c.time());
        out.writeNumberField("line", c.line());
        CheckJson.number(out, "x", c.x());
        CheckJson.number(out, "y", c.y());
        CheckJson.number(out, "rms", c.rms());
        CheckJson.number(out, "p95", c.p95());
        CheckJson.number(out, "p99", c.p99());
        out.writeEndObject();
    }

    private static void skipped(JsonGenerator out, Optional<ReadSummary> summary)
            throws IOException {
        if (summary.isEmpty()) {
            return;
        }
        out.writeArrayFieldStart("leftOut");
        for (ReadSummary.Skipped s : summary.get().skipped()) {
            out.writeStartObject();
            out.writeStringField("word", s.word());
            out.writeNumberField("count", s.count());
            out.writeNumberField("firstLine", s.firstLine());
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
