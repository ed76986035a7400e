// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.machine.Machine;
import foldwright.study.Assessment;
import java.util.ArrayList;
import java.util.List;

/**
 * The parts of a machine with count, size and load used against load allowed. Only what the machine
 * file states, and standard sizes from the tables beside it; what else a supplier asks is listed as
 * open.
 *
 * @param lines the parts, group by group
 * @param unlisted what a machine needs beyond them and its file does not describe
 */
public record OrderList(List<OrderLine> lines, List<String> unlisted) {
    private static final List<String> NEVER =
            List.of("base tray", "deck plate", "brackets and fasteners");

    private static final String POWER = "wiring, switches, motor drivers and power supply";

    public OrderList {
        lines = List.copyOf(lines);
        unlisted = List.copyOf(unlisted);
    }

    /** The list of an assessed machine, with the uses its checks found. */
    public static OrderList of(Assessment assessment) {
        Machine machine = assessment.machine();
        Uses uses = new Uses(assessment.checks());
        List<OrderLine> lines = new ArrayList<>();
        lines.addAll(new LiftParts(machine, uses).lines());
        lines.addAll(new DriveParts(machine, uses).lines());
        lines.addAll(new SpringParts(machine, uses).lines());
        machine.gantry().ifPresent(g -> lines.addAll(new GantryParts(g, uses).lines()));
        return new OrderList(lines, unlisted(machine));
    }

    private static List<String> unlisted(Machine machine) {
        List<String> out = new ArrayList<>(NEVER);
        if (machine.gantry().isPresent() || !machine.drive().byHand()) {
            out.add(POWER);
        }
        return out;
    }

    /** The lines of one group. */
    public List<OrderLine> of(OrderLine.Group group) {
        return lines.stream().filter(l -> l.group() == group).toList();
    }
}
