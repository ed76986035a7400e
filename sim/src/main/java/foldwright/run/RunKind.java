// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What was run, and which columns such a run has. */
public enum RunKind {
    /** The lift rises. */
    UNFOLD(false),
    /** The lift comes down. */
    FOLD(false),
    /** A toolpath is followed by the gantry. */
    REPLAY(true);

    private final List<RunColumn> columns;

    RunKind(boolean replay) {
        columns = Arrays.stream(RunColumn.values()).filter(c -> c.in(replay)).toList();
    }

    /** The word in a file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The columns a run of this kind has, in their usual order. */
    public List<RunColumn> columns() {
        return columns;
    }
}
