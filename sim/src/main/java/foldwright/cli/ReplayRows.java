// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.route.Section;
import foldwright.study.Shown;
import java.util.ArrayList;
import java.util.List;

/**
 * A replay over time as rows: tool error by cause in x and y, skew, tensions, torques, block loads
 * and lost steps, units in the header.
 */
final class ReplayRows {
    private final StreamedFile file;
    private boolean headed;

    ReplayRows(StreamedFile file) {
        this.file = file;
    }

    void row(double time, long line, double x, double y, GantryKernel kernel) {
        if (!headed) {
            headed = true;
            write(header(kernel));
        }
        GantryState s = GantryState.of(kernel, x, y);
        List<String> cells = new ArrayList<>();
        cells.add(Csv.number(time));
        cells.add(Long.toString(line));
        add(cells, Shown.MILLIMETRE, x, y);
        for (ErrorSplit.Offset o : offsets(s.error())) {
            add(cells, Shown.MILLIMETRE, o.x(), o.y());
        }
        add(cells, Shown.MILLIRADIAN, s.skew());
        add(cells, Shown.MILLIMETRE, s.endToEnd());
        s.tensions().forEach(t -> add(cells, Shown.NEWTON, t));
        s.motorTorques().forEach(t -> add(cells, Shown.NEWTON_METRE, t));
        add(cells, Shown.NEWTON, s.blocks().legSide());
        add(cells, Shown.NEWTON_METRE, s.blocks().legYaw());
        add(cells, Shown.NEWTON, s.blocks().carriageSide());
        add(cells, Shown.NEWTON_METRE, s.blocks().carriageYaw(), s.blocks().carriageTilt());
        for (int m = 0; m < kernel.motors(); m++) {
            cells.add(Long.toString(4 * kernel.slippedPeriods(m)));
        }
        write(cells);
    }

    private static List<ErrorSplit.Offset> offsets(ErrorSplit e) {
        return List.of(
                e.total(),
                e.beltStretch(),
                e.squareness(),
                e.skewPlay(),
                e.skewFlex(),
                e.blockGive(),
                e.bending(),
                e.carriageTwist(),
                e.motorLag());
    }

    private static List<String> header(GantryKernel kernel) {
        List<String> out = new ArrayList<>(List.of("time [s]", "line", "x [mm]", "y [mm]"));
        for (String cause :
                List.of(
                        "error",
                        "belt stretch",
                        "squareness",
                        "skew play",
                        "skew flex",
                        "block give",
                        "beam bending",
                        "carriage twist",
                        "motor lag")) {
            out.add(cause + " x [mm]");
            out.add(cause + " y [mm]");
        }
        out.add("skew [mrad]");
        out.add("skew end to end [mm]");
        for (Section s : kernel.system().sections()) {
            out.add("tension " + s.name() + " [N]");
        }
        kernel.model().motors().forEach(m -> out.add("torque " + m.axle() + " [N·m]"));
        out.addAll(
                List.of(
                        "leg block side force [N]",
                        "leg block moment [N·m]",
                        "bridge block side force [N]",
                        "bridge block yaw moment [N·m]",
                        "bridge block tilt moment [N·m]"));
        kernel.model().motors().forEach(m -> out.add("full steps lost " + m.axle()));
        return out;
    }

    private static void add(List<String> cells, Shown unit, double... values) {
        for (double v : values) {
            cells.add(Csv.number(unit.fromSi(v)));
        }
    }

    private void write(List<String> cells) {
        file.write(Csv.line(cells));
    }
}
