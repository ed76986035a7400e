// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MotionChapterTest {
    @Test
    void everyPublishedValueIsMet() {
        List<ProofValue> values = new MotionChapter().compute();
        assertThat(values).hasSizeGreaterThan(60);
        assertThat(values).filteredOn(value -> !value.pass()).isEmpty();
    }
}
