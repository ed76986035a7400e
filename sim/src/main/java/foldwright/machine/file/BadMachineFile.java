// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown where a machine file cannot be used; carries all its problems in order of place. */
public final class BadMachineFile extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    BadMachineFile(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** The message, under a line with the file and their count where there are several. */
    public String counted() {
        return problems.size() == 1
                ? getMessage()
                : problems.get(0).place().file()
                        + ": "
                        + problems.size()
                        + " problems\n"
                        + getMessage();
    }

    /** All problems, in order of place. */
    public List<Problem> problems() {
        return problems;
    }
}
