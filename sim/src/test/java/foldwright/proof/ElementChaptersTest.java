// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every published value on machine elements, one test each, so that a failure names its value. */
class ElementChaptersTest {
    private static final List<ProofChapter> CHAPTERS =
            List.of(
                    new ThreadChapter(),
                    new ColumnChapter(),
                    new SpringChapter(),
                    new MotorChapter(),
                    new BearingChapter(),
                    new RailChapter(),
                    new BeltChapter(),
                    new BeamChapter(),
                    new SafetyChapter());

    @TestFactory
    Stream<DynamicTest> everyPublishedValue() {
        return CHAPTERS.stream()
                .flatMap(chapter -> chapter.compute().stream())
                .map(value -> DynamicTest.dynamicTest(value.id(), () -> check(value)));
    }

    private static void check(ProofValue value) {
        assertThat(value.pass())
                .as(
                        () ->
                                String.format(
                                        Locale.ROOT,
                                        "computed %.9g, published %.9g %s, deviation %.3g of %.3g",
                                        value.computed(),
                                        value.published(),
                                        value.unit(),
                                        value.deviation(),
                                        value.tolerance()))
                .isTrue();
    }

    @TestFactory
    Stream<DynamicTest> idsAreUniqueAndSourcesStated() {
        return CHAPTERS.stream()
                .map(
                        chapter ->
                                DynamicTest.dynamicTest(
                                        chapter.title(),
                                        () -> {
                                            Set<String> ids = new HashSet<>();
                                            for (ProofValue value : chapter.compute()) {
                                                assertThat(ids.add(value.id()))
                                                        .as(value.id())
                                                        .isTrue();
                                                assertThat(value.source()).isNotBlank();
                                            }
                                        }));
    }
}
