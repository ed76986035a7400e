// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Gaps and forces of the standards' tables. */
class SafetyTest {
    private static List<BodyPart> caught(double widestMm, double narrowestMm) {
        return SafetyGap.violated(widestMm * 1e-3, narrowestMm * 1e-3).stream()
                .map(SafetyGap::part)
                .toList();
    }

    @Test
    void gapThatNobodyCanEnterIsSafe() {
        assertThat(caught(4, 0)).isEmpty();
    }

    @Test
    void gapThatStaysWideIsSafe() {
        assertThat(caught(900, 500)).isEmpty();
        assertThat(caught(900, 499)).containsExactly(BodyPart.BODY);
    }

    @Test
    void smallPartsAreCaughtFirst() {
        assertThat(caught(10, 3)).containsExactly(BodyPart.FINGER, BodyPart.TOES);
        assertThat(caught(60, 30))
                .contains(BodyPart.HAND, BodyPart.TOES)
                .doesNotContain(BodyPart.FINGER);
    }

    @Test
    void smallerGapsNeverBecomeSafer() {
        for (double widest : new double[] {5, 20, 60, 150, 400}) {
            int last = Integer.MAX_VALUE;
            for (double narrow = 0; narrow <= widest; narrow += 5) {
                assertThat(caught(widest, narrow)).hasSizeLessThanOrEqualTo(last);
                last = caught(widest, narrow).size();
            }
        }
    }

    @Test
    void reachGrowsWithTheOpening() {
        // ISO 13857:2019 Table 4
        for (ReachDistance.Shape shape : ReachDistance.Shape.values()) {
            double last = 0;
            for (ReachDistance row : ReachDistance.rows(shape)) {
                assertThat(row.distance()).isGreaterThanOrEqualTo(last);
                last = row.distance();
            }
        }
        OptionalDouble round = ReachDistance.needed(ReachDistance.Shape.ROUND, 9e-3);
        assertThat(round.orElseThrow()).isCloseTo(0.02, within(1e-12));
        assertThat(ReachDistance.needed(ReachDistance.Shape.SLOT, 0.121)).isEmpty();
    }

    @Test
    void forceLimitsKeepTheirConditions() {
        assertThat(ForceLimit.all()).hasSize(7);
        assertThat(ForceLimit.dynamicCrushing().condition()).isEqualTo("peak, for at most 0.75 s");
        assertThat(ForceLimit.staticCrushing().condition()).isEmpty();
    }
}
