// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.study.Check;
import foldwright.study.HeightPlot;
import foldwright.study.Question;
import java.util.List;
import java.util.Optional;

/**
 * What has been computed of a machine so far.
 *
 * @param curve force curve, once known
 * @param plot motor torque over height, once known
 * @param checks the checks known so far
 * @param waiting what is said where nothing is known
 */
public record Results(
        Optional<ForceCurve> curve, Optional<HeightPlot> plot, List<Check> checks, String waiting) {
    /** Nothing yet. */
    public static final Results NONE =
            new Results(Optional.empty(), Optional.empty(), List.of(), "not computed yet");

    public Results {
        checks = List.copyOf(checks);
    }

    /** The checks of a question. */
    public List<Check> of(Question question) {
        return checks.stream().filter(c -> c.question() == question).toList();
    }
}
