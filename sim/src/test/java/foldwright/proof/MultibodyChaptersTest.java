// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every published multibody value is met within the tolerance stated beside it. */
class MultibodyChaptersTest {
    @TestFactory
    Stream<DynamicTest> values() {
        return Stream.of(new MultibodyMotionChapter(), new MultibodyLoadsChapter())
                .flatMap(chapter -> chapter.compute().stream())
                .map(v -> DynamicTest.dynamicTest(v.id(), () -> check(v)));
    }

    private static void check(ProofValue v) {
        assertThat(v.deviation())
                .as(
                        "%s: computed %s, published %s %s",
                        v.id(), v.computed(), v.published(), v.unit())
                .isLessThanOrEqualTo(v.tolerance());
    }
}
