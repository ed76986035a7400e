// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.study.Numerals;
import foldwright.study.order.OrderLine;
import foldwright.study.order.OrderList;

/** What to order: parts with count, size, load used and allowed, and what is still open. */
final class PartsTable {
    private final Html out;
    private final OrderList list;

    PartsTable(Html out, OrderList list) {
        this.out = out;
        this.list = list;
    }

    void write() {
        out.leaf("h2", "Parts");
        out.leaf(
                "p",
                "Counts and sizes are those of the machine file. Load is the worst over the whole"
                        + " travel, of what the part may carry.");
        for (OrderLine.Group group : OrderLine.Group.values()) {
            if (!list.of(group).isEmpty()) {
                group(group);
            }
        }
        out.leaf(
                "p.limit",
                "Not in the machine file and so not listed: "
                        + String.join(", ", list.unlisted())
                        + ".");
    }

    private void group(OrderLine.Group group) {
        out.open("table.parts").open("thead").open("tr").leaf("th.n", "");
        out.leaf("th.q", group.words()).leaf("th", "size").leaf("th.n", "load of allowed");
        out.leaf("th.n", "margin").close("tr", "thead").open("tbody");
        list.of(group).forEach(this::row);
        out.close("tbody", "table");
    }

    private void row(OrderLine line) {
        out.open("tr").leaf("td.n.count", Integer.toString(line.count()));
        out.leaf("td.part", line.part()).open("td.size").text(line.size());
        if (!line.open().isEmpty()) {
            out.raw(" ").leaf("small", "To settle: " + String.join(", ", line.open()) + ".");
        }
        out.close("td");
        out.leaf("td.n.load", line.use().map(OrderLine.Use::words).orElse(""));
        out.open("td.n.margin");
        line.use()
                .ifPresent(u -> out.mark(u.outcome().verdict()).text(Numerals.margin(u.outcome())));
        out.close("td", "tr");
    }
}
