// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import foldwright.machine.file.MachineFile;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A run that can be looked at again.
 *
 * @param kind what was run
 * @param subject what was followed: the toolpath's name; empty for a lift
 * @param machine the machine as it was then, with its text
 * @param step largest time step [s]
 * @param outcome how it ended, in a word or two
 * @param table the run over time
 * @param events what happened, in order of time
 */
public record Run(
        RunKind kind,
        String subject,
        MachineFile machine,
        double step,
        String outcome,
        RunTable table,
        List<RunEvent> events) {
    public Run {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(table, "table");
        events = events.stream().sorted(Comparator.comparingDouble(RunEvent::time)).toList();
        for (RunColumn column : kind.columns()) {
            if (!table.has(column)) {
                throw new IllegalArgumentException(
                        kind.word() + " without the column " + column.title());
            }
        }
    }
}
