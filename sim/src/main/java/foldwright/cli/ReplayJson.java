// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.gantry.model.BlockLoads;
import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.replay.ChannelResult;
import foldwright.gantry.replay.ErrorMap;
import foldwright.gantry.replay.ReplayEvents;
import foldwright.gantry.replay.ReplayResult;
import foldwright.gantry.replay.SkewCauses;
import foldwright.machine.Machine;
import foldwright.motion.IsoReader;
import foldwright.motion.ReadSummary;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A replay's summary as JSON; numbers SI. */
final class ReplayJson {
    private ReplayJson() {}

    static void write(
            JsonGenerator out,
            Machine machine,
            ToolpathArgument toolpath,
            ReplayResult r,
            Optional<SkewCauses> causes)
            throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", machine.name());
        out.writeStringField("toolpath", toolpath.name());
        out.writeStringField("units", "SI");
        CheckJson.number(out, "duration", r.duration());
        out.writeNumberField("steps", r.steps());
        CheckJson.number(out, "step", r.stability().step());
        out.writeNumberField("halvings", r.stability().halvings());
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
        events(out, r.events());
        moment(out, "atLargestSkew", r.worstSkew());
        moment(out, "atLargestToolError", r.worstError());
        if (causes.isPresent()) {
            causes(out, causes.get());
        }
        map(out, r.map());
        skipped(out, toolpath.reader().map(IsoReader::summary));
        out.writeEndObject();
    }

    private static void events(JsonGenerator out, ReplayEvents e) throws IOException {
        out.writeObjectFieldStart("events");
        out.writeNumberField("slackSpells", e.slackSpells());
        CheckJson.number(out, "slackTime", e.slackTime());
        out.writeNumberField("firstSlackLine", e.firstSlackLine());
        out.writeNumberField("toothJumps", e.toothJumps());
        out.writeNumberField("firstToothJumpLine", e.firstToothJumpLine());
        CheckJson.number(out, "leastToothMargin", e.leastToothMargin());
        out.writeNumberField("lostSteps", e.lostSteps());
        out.writeNumberField("firstLossLine", e.firstLossLine());
        out.writeEndObject();
    }

    /** The tool's error by cause, and loads, at one instant. */
    private static void moment(JsonGenerator out, String name, GantryState s) throws IOException {
        out.writeObjectFieldStart(name);
        CheckJson.number(out, "skewEndToEnd", s.endToEnd());
        out.writeObjectFieldStart("toolError");
        ErrorSplit e = s.error();
        offset(out, "total", e.total());
        offset(out, "beltStretch", e.beltStretch());
        offset(out, "squareness", e.squareness());
        offset(out, "skewPlay", e.skewPlay());
        offset(out, "skewFlex", e.skewFlex());
        offset(out, "blockGive", e.blockGive());
        offset(out, "bending", e.bending());
        offset(out, "carriageTwist", e.carriageTwist());
        offset(out, "motorLag", e.motorLag());
        out.writeEndObject();
        numbers(out, "tensions", s.tensions());
        numbers(out, "motorTorques", s.motorTorques());
        CheckJson.number(out, "guideMoment", s.guideMoment());
        BlockLoads b = s.blocks();
        out.writeObjectFieldStart("blocks");
        CheckJson.number(out, "legSideForce", b.legSide());
        CheckJson.number(out, "legMoment", b.legYaw());
        CheckJson.number(out, "bridgeSideForce", b.carriageSide());
        CheckJson.number(out, "bridgeYawMoment", b.carriageYaw());
        CheckJson.number(out, "bridgeTiltMoment", b.carriageTilt());
        out.writeEndObject();
        out.writeEndObject();
    }

    private static void offset(JsonGenerator out, String name, ErrorSplit.Offset o)
            throws IOException {
        out.writeObjectFieldStart(name);
        CheckJson.number(out, "x", o.x());
        CheckJson.number(out, "y", o.y());
        out.writeEndObject();
    }

    private static void numbers(JsonGenerator out, String name, List<Double> values)
            throws IOException {
        out.writeArrayFieldStart(name);
        for (double v : values) {
            out.writeNumber(v);
        }
        out.writeEndArray();
    }

    private static void causes(JsonGenerator out, SkewCauses c) throws IOException {
        out.writeObjectFieldStart("skewCauses");
        CheckJson.number(out, "steadyAcceleration", c.quasiStatic());
        CheckJson.number(out, "ringing", c.ringing());
        CheckJson.number(out, "cornersAtSpeed", c.cornerSteps());
        CheckJson.number(out, "friction", c.friction());
        CheckJson.number(out, "total", c.total());
        out.writeNumberField("line", c.line());
        out.writeEndObject();
    }

    /** Cells the tool was in: middle, largest error, looks. */
    private static void map(JsonGenerator out, ErrorMap map) throws IOException {
        out.writeArrayFieldStart("errorMap");
        for (int row = 0; row < ErrorMap.CELLS; row++) {
            for (int column = 0; column < ErrorMap.CELLS; column++) {
                if (map.visits(column, row) > 0) {
                    out.writeStartObject();
                    CheckJson.number(out, "x", map.columnX(column));
                    CheckJson.number(out, "y", map.rowY(row));
                    CheckJson.number(out, "largest", map.largest(column, row));
                    out.writeNumberField("looks", map.visits(column, row));
                    out.writeEndObject();
                }
            }
        }
        out.writeEndArray();
    }

    /** A name as a key: "skew end to end" is skewEndToEnd. */
    private static String key(String words) {
        StringBuilder out = new StringBuilder();
        for (String word : words.split(" ")) {
            String first = word.substring(0, 1);
            out.append(out.isEmpty() ? first : first.toUpperCase(Locale.ROOT));
            out.append(word, 1, word.length());
        }
        return out.toString();
    }

    private static void channel(JsonGenerator out, ChannelResult c) throws IOException {
        out.writeObjectFieldStart(key(c.name()));
        out.writeStringField("unit", c.unit());
        CheckJson.number(out, "worst", c.worst());
        CheckJson.number(out, "time", c.time());
        out.writeNumberField("line", c.line());
        CheckJson.number(out, "x", c.x());
        CheckJson.number(out, "y", c.y());
        CheckJson.number(out, "rms", c.rms());
        CheckJson.number(out, "median", c.median());
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
