// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.GantryModel;
import foldwright.gantry.replay.ReplaySettings;
import foldwright.gantry.replay.SkewCauses;
import foldwright.machine.gantry.Gantry;
import foldwright.motion.ToolpathException;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** What makes the largest skew of a replay, in lines. */
final class SkewCauseWords {
    private SkewCauseWords() {}

    /** Replays for the causes; empty where the toolpath has no corners to stop at. */
    static Optional<SkewCauses> find(GantryModel model, Gantry gantry, ToolpathArgument toolpath)
            throws IOException {
        if (!toolpath.planned()) {
            return Optional.empty();
        }
        ReplaySettings settings = ReplaySettings.usual(model.layout().travel());
        try (InputStream steady = toolpath.open();
                InputStream stops = toolpath.open();
                InputStream corners = toolpath.open();
                InputStream all = toolpath.open()) {
            List<InputStream> moving = List.of(steady, corners, all);
            int[] opened = {0};
            return Optional.of(
                    SkewCauses.of(
                            model,
                            settings,
                            () -> toolpath.course(gantry, moving.get(opened[0]++)),
                            () -> toolpath.stopping(gantry, stops)));
        } catch (ToolpathException e) {
            throw new BadInput(toolpath.name() + ": " + e.getMessage());
        }
    }

    static List<String> lines(Optional<SkewCauses> causes) {
        if (causes.isEmpty()) {
            return List.of("causes of the skew: timed points cannot be timed anew with full stops");
        }
        SkewCauses c = causes.get();
        return List.of(
                "largest skew end to end, by cause:",
                line("steady acceleration, no friction", c.quasiStatic()),
                line("ringing", c.ringing()),
                line("corners passed at speed", c.cornerSteps()),
                line("friction of rails and bearings", c.friction()),
                line("all together" + (c.line() > 0 ? ", line " + c.line() : ""), c.total()));
    }

    private static String line(String cause, double metres) {
        return "  " + Numerals.with(metres, Shown.MILLIMETRE) + "  " + cause;
    }
}
