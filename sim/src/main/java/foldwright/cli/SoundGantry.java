// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.RouteCheck;
import foldwright.gantry.route.RouteFinding;
import foldwright.machine.gantry.Gantry;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** The moving model of a gantry whose belts can work. */
final class SoundGantry {
    private SoundGantry() {}

    /** Builds the model; every fault of the belt routes at once is the message when they cannot. */
    static GantryModel of(Path file, Gantry gantry) {
        List<RouteFinding> faults = RouteCheck.check(GantryAssembly.layout(gantry));
        if (!faults.isEmpty()) {
            String head =
                    file
                            + ": the belts cannot work, "
                            + (faults.size() == 1 ? "one fault" : faults.size() + " faults");
            throw new BadInput(
                    faults.stream()
                            .map(f -> "\n  gantry.belts, \"" + f.belt() + "\": " + f.message())
                            .collect(Collectors.joining("", head, "")));
        }
        return GantryAssembly.of(gantry);
    }

    /** How the motors move the tool, derived from the belt routes; one line an axis. */
    static List<String> relation(GantryModel model) {
        BeltSystem belts = new BeltSystem(model.layout(), IdlerModel.LUMPED);
        return RouteCheck.relation(belts).describe().lines().toList();
    }
}
