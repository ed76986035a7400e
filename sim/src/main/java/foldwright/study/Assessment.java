// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Everything that was found out about a machine.
 *
 * @param machine the machine
 * @param checks every check, in any order
 * @param cautions what can hurt, whatever the verdicts
 * @param facts heights, strokes, times and the like
 * @param trust how far the numbers can be trusted: energy balance, convergence
 */
public record Assessment(
        Machine machine,
        List<Check> checks,
        List<Caution> cautions,
        List<Fact> facts,
        List<Trust> trust) {

    /**
     * One statement on the quality of a run.
     *
     * @param run which run, e.g. "force curve"
     * @param words e.g. "energy balance closes to 0.02 %"
     * @param met whether it is within its own bound
     */
    public record Trust(String run, String words, boolean met) {}

    public Assessment {
        Objects.requireNonNull(machine, "machine");
        checks = List.copyOf(checks);
        cautions = List.copyOf(cautions);
        facts = List.copyOf(facts);
        trust = List.copyOf(trust);
    }

    /** The six questions in their order, each with its checks. */
    public List<Answer> answers() {
        return List.of(Question.values()).stream()
                .map(q -> new Answer(q, checks.stream().filter(c -> c.question() == q).toList()))
                .toList();
    }

    /** The answer that must be heard first: the most urgent, among equals the first asked. */
    public Answer headline() {
        return answers().stream()
                .filter(a -> !a.checks().isEmpty())
                .min(Comparator.comparingInt(a -> -a.verdict().urgency()))
                .orElse(answers().get(0));
    }

    /** The most urgent verdict of all checks; unknown questions without a check do not count. */
    public Verdict verdict() {
        return headline().verdict();
    }

    /** Every assumed input that a check stands on, each once. */
    public List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>();
        checks.forEach(c -> all.addAll(c.grounds().assumptions()));
        return List.copyOf(all);
    }
}
