// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.study.Series;
import foldwright.study.Verdict;
import org.junit.jupiter.api.Test;

class BandTest {
    @Test
    void crossingsLieOnTheStraightLineBetweenPoints() {
        Series h = Series.of(0, 1, 2);
        Series m = Series.of(0.5, 2.5, 0.5);
        assertThat(Band.of(h, m, 1.5))
                .containsExactly(
                        new Band(Verdict.FAILS, 0, 0.25),
                        new Band(Verdict.TIGHT, 0.25, 0.5),
                        new Band(Verdict.HOLDS, 0.5, 1.5),
                        new Band(Verdict.TIGHT, 1.5, 1.75),
                        new Band(Verdict.FAILS, 1.75, 2));
    }

    @Test
    void noLoadNextToALoadChangesHalfWay() {
        Series h = Series.of(0, 1);
        Series m = Series.of(0.5, Double.POSITIVE_INFINITY);
        assertThat(Band.of(h, m, 1.5)).extracting(Band::verdict).contains(Verdict.FAILS);
    }
}
