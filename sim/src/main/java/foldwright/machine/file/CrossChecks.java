// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;

/** Checks values against each other once each of them is right by itself. */
final class CrossChecks {
    private CrossChecks() {}

    static void check(Machine machine, Node root, Problems problems) {
        Contradictions report = new Contradictions(root, problems);
        if (new LiftChecks(machine, report).check()) {
            new DriveChecks(machine, report).check();
            new SpringChecks(machine, report).check();
        }
        new GantryChecks(machine, report).check();
    }
}
