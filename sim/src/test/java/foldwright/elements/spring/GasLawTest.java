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

class GasLawTest extends SpringLawContract {
    @Provide
    @Override
    Arbitrary<SpringLaw> laws() {
        return Combinators.combine(
                        number(0.05, 0.5),
                        number(0.2, 0.9),
                        number(10, 1000),
                        number(1, 3),
                        Arbitraries.of(1.0, 1.0 + 1e-9, 1.2, 1.4),
                        Arbitraries.of(Attachment.values()))
                .as(
                        (length, share, force, rise, exponent, hold) ->
                                new GasSpring(length, length * share, force, rise, exponent, 0)
                                        .law(hold));
    }

    @Override
    SpringLaw oneLaw() {
        return new GasSpring(0.205, 0.06, 60, 1.33, 1.4, 5).law(Attachment.TOUCHING);
    }

    @Override
    List<Double> kinks(SpringLaw law) {
        return List.of(((GasLaw) law).seatLength());
    }

    @Example
    void slowStrokeObeysBoyle() {
        // Boyle-Mariotte: p V constant, so the force at full stroke is the stated rise times F1;
        // the seat takes 1/500 of the stroke from the gas
        GasSpring spring = new GasSpring(0.2, 0.06, 60, 1.5, 1, 0);
        GasLaw law = spring.law(Attachment.TOUCHING);
        double share = spring.volumeShare();
        assertThat(share).isCloseTo(1.0 / 3, within(1e-15));
        assertThat(law.force(0.14)).isCloseTo(90, within(0.1));
        assertThat(law.force(0.14)).isCloseTo(60 / (1 - share * (1 - 1 / 500.0)), within(1e-9));
        assertThat(law.force(law.seatLength())).isCloseTo(60, within(1e-9));
    }

    @Example
    void fastStrokePushesHarderByThePowerOfTheSlowOne() {
        GasLaw slow = new GasSpring(0.2, 0.06, 60, 1.5, 1, 0).law(Attachment.TOUCHING);
        GasLaw fast = new GasSpring(0.2, 0.06, 60, 1.5, 1.4, 0).law(Attachment.TOUCHING);
        double x = 0.16;
        // F/F1 = (V0/V)^n
        assertThat(fast.force(x) / 60).isCloseTo(Math.pow(slow.force(x) / 60, 1.4), within(1e-12));
    }

    @Example
    void restsOnItsOwnStop() {
        GasLaw touching = new GasSpring(0.2, 0.06, 60, 1.5, 1, 0).law(Attachment.TOUCHING);
        GasLaw attached = new GasSpring(0.2, 0.06, 60, 1.5, 1, 0).law(Attachment.ATTACHED);
        assertThat(touching.force(0.2)).isZero();
        assertThat(touching.force(0.21)).isZero();
        assertThat(attached.force(0.2001)).isCloseTo(-60 * 500 / 0.06 * 0.0001, within(1e-6));
    }

    @Example
    void impossibleSpringsAreRefusedByName() {
        assertThatThrownBy(() -> new GasSpring(0.2, 0.3, 60, 1.5, 1, 0))
                .hasMessageStartingWith("stroke is 0.3 m");
        assertThatThrownBy(() -> new GasSpring(0.2, 0.1, 60, 0.9, 1, 0))
                .hasMessage("slow force rise is 0.9 1, allowed: 1.0 to 10.0");
    }
}
