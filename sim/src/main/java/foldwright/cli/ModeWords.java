// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.gantry.model.Modes;
import foldwright.study.GantryModes;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import java.io.IOException;
import java.util.List;

/** Natural frequencies of a gantry as a table, and with their shapes as JSON. */
final class ModeWords {
    /** Modes in the table; those above ring out within a millisecond or two. */
    private static final int LOWEST = 4;

    private ModeWords() {}

    static String table(GantryModes modes) {
        Table table =
                new Table(
                        List.of("natural frequency", "in the middle", "over the travel", "mostly"),
                        List.of(
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.LEFT));
        List<GantryModes.Shape> middle = modes.places().get(0).modes();
        for (int i = 0; i < Math.min(LOWEST, middle.size()); i++) {
            double[] range = modes.range(i);
            table.row(
                    Integer.toString(i + 1),
                    Numerals.with(middle.get(i).mode().frequency(), Shown.HERTZ),
                    Numerals.number(range[0]) + " to " + Numerals.with(range[1], Shown.HERTZ),
                    middle.get(i).mostly());
        }
        return table.text(Prose.forTerminal());
    }

    static void json(JsonGenerator out, GantryModes modes) throws IOException {
        out.writeArrayFieldStart("modes");
        for (GantryModes.At place : modes.places()) {
            out.writeStartObject();
            CheckJson.number(out, "x", place.x());
            CheckJson.number(out, "y", place.y());
            out.writeArrayFieldStart("shapes");
            for (GantryModes.Shape s : place.modes()) {
                shape(out, s);
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private static void shape(JsonGenerator out, GantryModes.Shape s) throws IOException {
        Modes.Mode m = s.mode();
        out.writeStartObject();
        CheckJson.number(out, "frequency", m.frequency());
        out.writeStringField("mostly", s.mostly());
        CheckJson.number(out, "bridgeX", m.bridgeX());
        CheckJson.number(out, "bridgeY", m.bridgeY());
        CheckJson.number(out, "skew", m.skew());
        CheckJson.number(out, "carriageX", m.carriageX());
        CheckJson.number(out, "carriageY", m.carriageY());
        CheckJson.number(out, "carriageYaw", m.carriageYaw());
        out.writeArrayFieldStart("axles");
        for (double a : m.axles()) {
            out.writeNumber(a);
        }
        out.writeEndArray();
        out.writeEndObject();
    }
}
