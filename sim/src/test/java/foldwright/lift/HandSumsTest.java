// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandSumsTest {
    private static final double FLANK = Math.toRadians(15);

    /** Virtual work; the same pose solved with every pin force in {@link PlanePinSolution}. */
    @Test
    void footForceIsTheFullPinSolutionWithoutFriction() {
        var sum = new HandLinkage(2, .19, Math.toRadians(5.13)).footForce(50, 9, 0);
        assertThat(sum.value()).isCloseTo(1214.14, within(.005));
        double full =
                new PlanePinSolution(
                                PlaneLift.plain(2, .19, 9 / 4.0, 50, .3), Math.toRadians(5.13), 1)
                        .footForce();
        assertThat(sum.value()).isCloseTo(full, within(1e-9));
    }

    /** 1/tan at 1, 2, 5.13, 10, 15, 20, 30, 45 degrees. */
    @ParameterizedTest
    @CsvSource({"1, 57.3", "2, 28.6", "5.13, 11.1", "10, 5.67", "15, 3.73", "20, 2.75", "45, 1"})
    void heightPerFootTravelIsTheTangentRule(double deg, double factor) {
        assertThat(new HandLinkage(1, .1, Math.toRadians(deg)).heightPerFootTravel().value())
                .isCloseTo(factor, within(.005 * factor));
    }

    @Test
    void lockHeightOfPrintedBronzeAndBallPins() {
        assertThat(HandLinkage.lockHeight(.3, .004).value()).isCloseTo(4.8e-3, within(1e-12));
        assertThat(HandLinkage.lockHeight(.1, .003).value()).isCloseTo(1.2e-3, within(1e-12));
        assertThat(HandLinkage.lockHeight(.01, .0025).value()).isCloseTo(1e-4, within(1e-12));
    }

    @Test
    void frictionFactorFollowsThePinSolutionNearFlat() {
        double angle = Math.asin(13.0 / 95);
        double hand = new HandLinkage(3, .095, angle).pinFrictionFactor(.3, .004).value();
        assertThat(hand).isCloseTo(4.17, within(.005));
        var free = PlaneLift.plain(3, .095, 0, 20, .5);
        double full =
                new PlanePinSolution(free.with(new PlaneLift.Friction(.3, .004, 0, 0)), angle, 1)
                                .footForce()
                        / new PlanePinSolution(free, angle, 1).footForce();
        assertThat(hand).isCloseTo(full, within(.01 * full));
        assertThat(new HandLinkage(1, .1, Math.asin(.0479)).pinFrictionFactor(.3, .004).value())
                .isInfinite();
    }

    /** Textbook example, no collar: Bhandari, Design of Machine Elements, Example 6.2. */
    @Test
    void screwTorquesOfTheTextbookThread() {
        var screw = new HandDrive(.094, .024, FLANK);
        assertThat(screw.raiseTorque(300e3, .15).value()).isCloseTo(3378.16, within(.34));
        assertThat(screw.lowerTorque(300e3, .15).value()).isCloseTo(1030.69, within(.11));
        assertThat(screw.efficiency(.15).value()).isCloseTo(.33921, within(1e-5));
        assertThat(screw.holdingFriction().value()).isCloseTo(.0785014, within(1e-7));
    }

    /** Friction at which holding ends, ISO 2904 pitch diameters d - P/2. */
    @ParameterizedTest
    @CsvSource({"8, 1.5, 1.5, .064", "10, 2, 2, .0683", "8, 2, 2, .0878", "8, 2, 4, .176"})
    void holdingEndsAtTheLeadAngle(double d, double pitch, double lead, double friction) {
        var screw = new HandDrive((d - pitch / 2) * 1e-3, lead * 1e-3, FLANK);
        assertThat(screw.holdingFriction().value()).isCloseTo(friction, within(5e-4));
    }

    /** Halving the lead does not halve the torque. */
    @ParameterizedTest
    @CsvSource({"4, 1.37", "2, 1.03", "1, .86"})
    void leadAgainstTorquePerNewton(double lead, double torque) {
        var screw = new HandDrive(.009, lead * 1e-3, FLANK);
        assertThat(screw.raiseTorque(1, .15).value() * 1e3).isCloseTo(torque, within(.01));
    }

    @Test
    void springsLeaveAnEighthOfTheWeight() {
        var springs = new HandSprings(4, 155, .115);
        assertThat(springs.residual(5.2 * 9.81, .9 * 9.81, .040).value())
                .isCloseTo(8.9, within(.05));
        assertThat(springs.energy(.040).value()).isCloseTo(1.74, within(.005));
        assertThat(springs.lift(.120).value()).isZero();
    }

    @Test
    void armLengthErrorShrinksAsTheStackRises() {
        var flat = new HandLinkage(2, .19, Math.toRadians(5.13));
        assertThat(flat.sideErrorFromArmLength(1e-4).value()).isCloseTo(2.24e-3, within(5e-6));
        assertThat(flat.sideErrorFromFoot(8e-5).value()).isCloseTo(1.78e-3, within(5e-6));
    }

    @Test
    void linesReadTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(HandLinkage.lockHeight(.3, .004).worked())
                    .isEqualTo("4 × 0.3 × 4 mm = 4.8 mm");
            assertThat(new HandLinkage(2, .19, Math.toRadians(5.13)).footForce(50, 9, 0).worked())
                    .isEqualTo("2 × (50 N + 9 N/2)/tan 5.13° = 1\u202f214 N");
        } finally {
            Locale.setDefault(before);
        }
    }
}
