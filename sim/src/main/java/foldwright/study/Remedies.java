// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Tries changes by running the check again with each, then puts the best ones together, best first,
 * until the check holds.
 */
final class Remedies {
    private static final int MOST_SHOWN = 6;
    private static final int MOST_TOGETHER = 4;
    private static final int MOST_PAIRS = 2;

    /** A change must better the margin by this factor to be shown. */
    private static final double WORTH_IT = 1.02;

    private final Machine machine;
    private final Function<Machine, Outcome> run;
    private final Outcome now;

    /**
     * Remedies for one check.
     *
     * @param now the outcome as it is
     * @param run finds the outcome of a changed machine
     */
    Remedies(Machine machine, Outcome now, Function<Machine, Outcome> run) {
        this.machine = machine;
        this.now = now;
        this.run = run;
    }

    private record Tried(Change change, Outcome outcome) {
        int size() {
            return change.words().split(", ").length;
        }

        double merit() {
            return outcome.margin() / outcome.holdsFrom();
        }
    }

    /** Single changes, least first, then combinations that grow until one holds. */
    List<Remedy> find(List<Change> changes) {
        List<Tried> single = new ArrayList<>();
        for (Change c : changes) {
            Tried t = attempt(c);
            if (t.outcome().margin() > WORTH_IT * Math.max(1e-9, now.margin())) {
                single.add(t);
            }
        }
        single.sort(Comparator.comparingDouble(Tried::merit).reversed());
        List<Tried> shown = new ArrayList<>(single.stream().limit(MOST_SHOWN).toList());
        if (!single.isEmpty() && single.get(0).outcome().verdict() != Verdict.HOLDS) {
            shown.addAll(together(single));
        }
        return shown.stream()
                .sorted(Comparator.comparingDouble(Tried::merit))
                .map(t -> new Remedy(t.change().words(), t.outcome()))
                .toList();
    }

    private Tried attempt(Change c) {
        return new Tried(c, run.apply(c.apply().apply(machine)));
    }

    /**
     * The best change with each other one; from the best of these on with a third and a fourth,
     * until one holds.
     */
    private List<Tried> together(List<Tried> single) {
        List<Tried> out = new ArrayList<>();
        Tried sum = single.get(0);
        while (sum.outcome().verdict() != Verdict.HOLDS && sum.size() < MOST_TOGETHER) {
            List<Tried> more = new ArrayList<>();
            for (Tried other : single) {
                if (!sameKind(sum.change(), other.change())) {
                    more.add(attempt(sum.change().and(other.change())));
                }
            }
            more.sort(Comparator.comparingDouble(Tried::merit).reversed());
            if (more.isEmpty() || more.get(0).merit() < WORTH_IT * sum.merit()) {
                break;
            }
            more.stream().limit(MOST_PAIRS).forEach(out::add);
            sum = more.get(0);
        }
        return out;
    }

    /** Two belts are one choice: the first or the last word of a change names what it changes. */
    private static boolean sameKind(Change sum, Change next) {
        String[] words = next.words().split(" ");
        String first = words[0] + " ";
        String last = " " + words[words.length - 1];
        return List.of(sum.words().split(", ")).stream()
                .anyMatch(w -> w.startsWith(first) || w.endsWith(last));
    }
}
