// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.Section;
import foldwright.machine.gantry.BeltRoute;
import foldwright.machine.gantry.Gantry;
import foldwright.run.Run;
import foldwright.run.RunTable;
import foldwright.viewer.scene.BeltNames;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartLook;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Belts in the signed ink of their tension now against that at rest, before the first move. */
final class TensionLook {
    private final RunTable table;
    private final Map<String, Integer> sectionOf = new HashMap<>();
    private final double end;

    TensionLook(Run run) {
        table = run.table();
        Gantry gantry = run.machine().machine().gantry().orElseThrow();
        BeltSystem system = new BeltSystem(GantryAssembly.layout(gantry), IdlerModel.LUMPED);
        for (Section section : system.sections()) {
            int at = table.sections().indexOf(section.name());
            if (at >= 0) {
                name(section, gantry.belts().get(section.belt()), at);
            }
        }
        double most = 0;
        for (int s = 0; s < table.sections().size(); s++) {
            for (int r = 0; r < table.rows(); r++) {
                most = Math.max(most, Math.abs(off(s, r)));
            }
        }
        end = most;
    }

    private void name(Section section, BeltRoute belt, int at) {
        int n = belt.route().size();
        for (int i = 0; i < section.spanCount(); i++) {
            int from = (section.firstSpan() + i) % n;
            int to = (from + 1) % n;
            String start = belt.route().get(from).name();
            String stop = belt.route().get(to).name();
            sectionOf.put(BeltNames.strand(belt.name(), start, stop), at);
            // Where it lies on a wheel it is drawn as the strand that arrives there.
            sectionOf.put(BeltNames.wrap(belt.name(), stop), at);
        }
    }

    /** Tension beside that at rest [N]. */
    private double off(int section, int row) {
        return table.tension(section, row) - table.tension(section, 0);
    }

    /** Largest way of any section off its tension at rest [N]; 0 where no tension is known. */
    double end() {
        return end;
    }

    /**
     * The belts at a time.
     *
     * @param end of the scale, both ways [N]
     */
    PartLook at(double time, double end) {
        int row = table.row(time);
        return new PartLook() {
            @Override
            public void load(Part part, float[] out, int at) {
                Integer section = sectionOf.get(part.name());
                if (section == null || !(end > 0)) {
                    PLAIN.load(part, out, at);
                    return;
                }
                float share = (float) (0.5 + 0.5 * off(section, row) / end);
                out[at] = share;
                out[at + 1] = share;
                out[at + 2] = share;
                out[at + 3] = 0.5f;
            }

            @Override
            public float beltSwell() {
                return end > 0 ? 2.5f : 1;
            }
        };
    }

    /**
     * Words for the ink.
     *
     * @param end of the scale, both ways [N]
     */
    static List<String> words(double end) {
        return end > 0
                ? List.of(
                        "belts: copper slacker, blue tighter than at rest, in this run up to ±"
                                + foldwright.study.Numerals.with(
                                        end, foldwright.study.Shown.NEWTON))
                : List.of();
    }
}
