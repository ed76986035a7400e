// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import java.util.ArrayList;
import java.util.List;

/** Checks values against each other once each of them is right by itself. */
public final class CrossChecks {
    private CrossChecks() {}

    /** Whether the values of a machine can be true together, as those of a file have to be. */
    public static boolean agree(Machine machine) {
        List<String> against = new ArrayList<>();
        check(machine, (path, found, allowed) -> against.add(path));
        return against.isEmpty();
    }

    static void check(Machine machine, Contradictions report) {
        if (new LiftChecks(machine, report).check()) {
            new DriveChecks(machine, report).check();
            new SpringChecks(machine, report).check();
        }
        new GantryChecks(machine, report).check();
    }
}
