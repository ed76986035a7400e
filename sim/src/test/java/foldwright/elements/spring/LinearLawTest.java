// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.Provide;

class LinearLawTest extends SpringLawContract {
    @Provide
    @Override
    Arbitrary<SpringLaw> laws() {
        return Combinators.combine(
                        number(1, 1e6),
                        number(0.02, 1),
                        number(0.1, 0.9),
                        Arbitraries.of(Attachment.values()))
                .as(
                        (rate, free, share, hold) ->
                                new LinearLaw(
                                        rate, free, free * share, hold, SpringLaw.Measure.LENGTH));
    }

    @Override
    SpringLaw oneLaw() {
        return new LinearLaw(155, 0.115, 0.028, Attachment.TOUCHING, SpringLaw.Measure.LENGTH);
    }

    @Override
    List<Double> kinks(SpringLaw law) {
        return List.of();
    }

    @Example
    void touchingSpringLetsGoAndAttachedOnePulls() {
        LinearLaw touching =
                new LinearLaw(1000, 0.1, 0.04, Attachment.TOUCHING, SpringLaw.Measure.LENGTH);
        LinearLaw attached =
                new LinearLaw(1000, 0.1, 0.04, Attachment.ATTACHED, SpringLaw.Measure.LENGTH);
        assertThat(touching.force(0.11)).isZero();
        assertThat(touching.stiffness(0.11)).isZero();
        assertThat(touching.energy(0.11)).isZero();
        // 1000 N/m over 10 mm, Hooke
        assertThat(attached.force(0.11)).isCloseTo(-10, within(1e-12));
        assertThat(attached.energy(0.11)).isCloseTo(0.05, within(1e-15));
        assertThat(touching.force(0.09)).isEqualTo(attached.force(0.09));
    }

    @Example
    void solidCoilsStopTheSpring() {
        LinearLaw law =
                new LinearLaw(1000, 0.1, 0.04, Attachment.TOUCHING, SpringLaw.Measure.LENGTH);
        assertThat(law.force(0.04)).isCloseTo(60, within(1e-12));
        assertThat(law.force(0.039)).isCloseTo(60 + 1000 * 1000 * 0.001, within(1e-9));
    }

    @Example
    void impossibleSpringsAreRefusedByName() {
        assertThatThrownBy(
                        () ->
                                new LinearLaw(
                                        -1, 0.1, 0, Attachment.TOUCHING, SpringLaw.Measure.LENGTH))
                .hasMessage("spring rate is -1.0 N/m, allowed: a finite value above 0");
        assertThatThrownBy(
                        () ->
                                new LinearLaw(
                                        1, 0.1, 0.1, Attachment.TOUCHING, SpringLaw.Measure.LENGTH))
                .hasMessage("limit coordinate is 0.1, allowed: below the free one, 0.1");
    }
}
