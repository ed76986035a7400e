// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.study.Numerals;
import foldwright.study.order.OrderLine;
import foldwright.study.order.OrderList;
import java.util.List;
import java.util.stream.Collectors;

/** The list of parts for a terminal. */
final class OrderWords {
    private final OrderList list;

    OrderWords(OrderList list) {
        this.list = list;
    }

    /** Count, part and size, group by group. */
    Table table() {
        Table table =
                new Table(
                        List.of("count", "part", "size, and load of what it may carry"),
                        List.of(Table.Side.RIGHT, Table.Side.LEFT, Table.Side.LEFT));
        for (OrderLine line : list.lines()) {
            table.row(Integer.toString(line.count()), line.part(), size(line));
        }
        return table;
    }

    private static String size(OrderLine line) {
        return line.size()
                + line.use()
                        .map(u -> "; " + u.words() + " (" + Numerals.margin(u.outcome()) + ")")
                        .orElse("");
    }

    /** What a supplier will ask and the machine file does not say. */
    String open() {
        return "To settle before ordering: "
                + list.lines().stream()
                        .filter(l -> !l.open().isEmpty())
                        .map(l -> l.part() + " (" + String.join(", ", l.open()) + ")")
                        .distinct()
                        .collect(Collectors.joining("; "))
                + ".";
    }

    /** What the list does not hold. */
    String unlisted() {
        return "Not in the machine file: " + String.join(", ", list.unlisted()) + ".";
    }
}
