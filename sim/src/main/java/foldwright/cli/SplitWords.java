// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.study.Numerals;
import foldwright.study.Share;
import foldwright.study.Split;
import java.util.List;
import java.util.OptionalDouble;

/** What makes a load, as a table for the terminal: value and percentage a cause. */
final class SplitWords {
    private SplitWords() {}

    /** The table, set in by two places. */
    static String of(Split split) {
        Table table =
                new Table(
                        List.of("  what makes the " + split.words(), "", ""),
                        List.of(Table.Side.LEFT, Table.Side.RIGHT, Table.Side.RIGHT));
        for (Share s : split.told()) {
            OptionalDouble part = split.part(s);
            table.row(
                    "    " + s.name(),
                    s.amount().text(),
                    part.isPresent() ? Numerals.percent(part.getAsDouble()) : "");
        }
        table.row("    together", split.whole().text(), "");
        return table.text();
    }
}
