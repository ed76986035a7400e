// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Every published value of the belt gantries holds. */
class GantryChapterTest {
    @Test
    void everyValueHolds() {
        assertThat(new GantryChapter().compute())
                .hasSizeGreaterThan(50)
                .allSatisfy(v -> assertThat(v.pass()).as(v.toString()).isTrue());
    }
}
