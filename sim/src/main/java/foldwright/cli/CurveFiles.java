// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.Finding;
import foldwright.lift.ForceCurve;
import foldwright.lift.Shares;
import foldwright.study.Assessment;
import foldwright.study.Check;
import foldwright.study.Shown;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A force curve as CSV and JSON. */
final class CurveFiles {
    private CurveFiles() {}

    /** All points, raising first; the first six columns are fixed. */
    static String csv(ForceCurve curve) {
        List<String> header =
                new ArrayList<>(
                        List.of(
                                "direction",
                                "height [mm]",
                                "foot force [N]",
                                "motor torque [N·m]",
                                "available torque [N·m]",
                                "margin [1]",
                                "arm angle [°]",
                                "deck speed [mm/s]",
                                "motor speed [rev/s]",
                                "screw force [N]",
                                "screw torque [N·m]",
                                "largest pin force [N]",
                                "largest arm bending [N·m]"));
        for (Cause c : Cause.values()) {
            header.add("foot force by " + c.label() + " [N]");
        }
        for (Cause c : Cause.values()) {
            header.add("motor torque by " + c.label() + " [N·m]");
        }
        Csv csv = new Csv(header);
        for (Direction way : Direction.values()) {
            curve.points(way).forEach(p -> csv.row(cells(p)));
        }
        return csv.text();
    }

    private static List<String> cells(CurvePoint p) {
        List<String> cells = new ArrayList<>();
        cells.add(p.at().direction().label());
        cells.add(Csv.number(Shown.MILLIMETRE.fromSi(p.height())));
        cells.add(Csv.number(p.footForce()));
        cells.add(Csv.number(p.motor().needed()));
        cells.add(Csv.number(p.motor().available()));
        cells.add(Csv.number(p.margin()));
        cells.add(Csv.number(Shown.DEGREE.fromSi(p.at().angle())));
        cells.add(Csv.number(Shown.MILLIMETRE_PER_SECOND.fromSi(p.at().deckSpeed())));
        cells.add(Csv.number(Shown.REVOLUTION_PER_SECOND.fromSi(p.motor().speed())));
        cells.add(Csv.number(p.screw().force()));
        cells.add(Csv.number(p.screw().torque()));
        cells.add(Csv.number(p.parts().worstPin().force()));
        cells.add(
                Csv.number(
                        p.parts().arms().stream().mapToDouble(a -> a.bending()).max().orElse(0)));
        for (Cause c : Cause.values()) {
            cells.add(Csv.number(p.footShares().of(c)));
        }
        for (Cause c : Cause.values()) {
            cells.add(Csv.number(p.motorShares().of(c)));
        }
        return cells;
    }

    /** The curve with its verdict; all numbers SI. */
    static void json(JsonGenerator out, ForceCurve curve, Check motor, List<Assessment.Trust> trust)
            throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", curve.machine());
        out.writeStringField("units", "SI");
        out.writeFieldName("check");
        CheckJson.check(out, motor);
        out.writeArrayFieldStart("points");
        for (Direction way : Direction.values()) {
            for (CurvePoint p : curve.points(way)) {
                point(out, p);
            }
        }
        out.writeEndArray();
        out.writeArrayFieldStart("findings");
        for (Finding f : curve.findings()) {
            out.writeStartObject();
            out.writeStringField("kind", f.kind().name().toLowerCase(Locale.ROOT));
            out.writeStringField("part", f.part());
            CheckJson.number(out, "from", f.from());
            CheckJson.number(out, "to", f.to());
            CheckJson.number(out, "value", f.value());
            out.writeStringField("sentence", f.sentence());
            out.writeEndObject();
        }
        out.writeEndArray();
        CheckJson.trust(out, trust);
        out.writeEndObject();
    }

    private static void point(JsonGenerator out, CurvePoint p) throws IOException {
        out.writeStartObject();
        out.writeStringField("direction", p.at().direction().label());
        CheckJson.number(out, "height", p.height());
        CheckJson.number(out, "footForce", p.footForce());
        CheckJson.number(out, "motorTorque", p.motor().needed());
        CheckJson.number(out, "availableTorque", p.motor().available());
        CheckJson.number(out, "margin", p.margin());
        CheckJson.number(out, "motorSpeed", p.motor().speed());
        CheckJson.number(out, "screwForce", p.screw().force());
        shares(out, "footShares", p.footShares());
        shares(out, "motorShares", p.motorShares());
        out.writeEndObject();
    }

    private static void shares(JsonGenerator out, String name, Shares shares) throws IOException {
        out.writeObjectFieldStart(name);
        for (Cause c : Cause.values()) {
            CheckJson.number(out, c.name().toLowerCase(Locale.ROOT), shares.of(c));
        }
        out.writeEndObject();
    }
}
