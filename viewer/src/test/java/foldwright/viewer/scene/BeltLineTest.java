// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Length of an open belt round two pulleys against the closed form (any handbook of machine
 * elements).
 */
class BeltLineTest {
    @Test
    void lengthOfAnOpenBelt() {
        double r1 = 0.0051;
        double r2 = 0.0153;
        double c = 0.12;
        float[] line = BeltLine.round(List.of(new double[] {0, 0, r1}, new double[] {c, 0, r2}));
        double length = 0;
        int n = line.length / 2;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            length += Math.hypot(line[2 * j] - line[2 * i], line[2 * j + 1] - line[2 * i + 1]);
        }
        double alpha = Math.asin((r2 - r1) / c);
        double exact = 2 * c * Math.cos(alpha) + Math.PI * (r1 + r2) + 2 * alpha * (r2 - r1);
        // 48 chords a circle: shorter by (pi/48)^2/6 of the arcs, some 1e-4 of the whole.
        assertThat(length).isBetween(exact * (1 - 1e-3), exact);
    }

    @Test
    void aPulleyInsideTheOthersDoesNotTouch() {
        float[] two =
                BeltLine.round(List.of(new double[] {0, 0, 0.02}, new double[] {0.1, 0, 0.02}));
        float[] three =
                BeltLine.round(
                        List.of(
                                new double[] {0, 0, 0.02},
                                new double[] {0.1, 0, 0.02},
                                new double[] {0.05, 0, 0.005}));
        assertThat(three).containsExactly(two);
    }
}
