// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** What every {@link SpringLaw} promises; the test of a law supplies designs and their kinks. */
abstract class SpringLawContract {
    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(10);
    private static final int PIECES = 40;
    private static final String SEED = "20261125";

    /** Laws to try. */
    @Provide
    abstract Arbitrary<SpringLaw> laws();

    /** One law for the count of allocated bytes. */
    abstract SpringLaw oneLaw();

    /** Coordinates where the force has a kink or steepens, free and limit coordinate left out. */
    abstract List<Double> kinks(SpringLaw law);

    private List<Double> allKinks(SpringLaw law) {
        List<Double> all = new ArrayList<>(kinks(law));
        all.add(law.freeCoordinate());
        all.add(law.limitCoordinate());
        return all;
    }

    /** Doubles with four decimals. */
    static Arbitrary<Double> number(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(4).withoutEdgeCases();
    }

    private static double range(SpringLaw law) {
        return law.freeCoordinate() - law.limitCoordinate();
    }

    private static double at(SpringLaw law, double share) {
        return law.limitCoordinate() + share * range(law);
    }

    @Property(tries = 600, seed = SEED)
    void energyIsTheIntegralOfTheForce(
            @ForAll("laws") SpringLaw law,
            @ForAll @Scale(4) @DoubleRange(min = -0.01, max = 1.2) double share) {
        double x = at(law, share);
        double sum = integral(law, x, law.freeCoordinate());
        double scale = Math.max(law.energy(law.limitCoordinate()), Math.abs(sum));
        // the quadrature's own error on the steep end of a closing cone is below 1e-9
        assertThat(law.energy(x)).isCloseTo(sum, within(1e-8 * scale));
        assertThat(law.energy(x)).isNotNegative();
    }

    private double integral(SpringLaw law, double from, double to) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        List<Double> ends = new ArrayList<>(List.of(low, high));
        allKinks(law).stream().filter(k -> k > low && k < high).forEach(ends::add);
        ends.sort(null);
        double sum = 0;
        for (int i = 1; i < ends.size(); i++) {
            sum += smoothIntegral(law, ends.get(i - 1), ends.get(i));
        }
        return from <= to ? sum : -sum;
    }

    /** Pieces shrink towards the compressed end, where a cone's force has a root singularity. */
    private static double smoothIntegral(SpringLaw law, double low, double high) {
        double sum = 0;
        double begin = low;
        for (int i = 1; i <= PIECES; i++) {
            double end = low + (high - low) * Math.pow((double) i / PIECES, 4);
            double half = (end - begin) / 2;
            double middle = (end + begin) / 2;
            sum += half * GAUSS.integrate(t -> law.force(middle + half * t));
            begin = end;
        }
        return sum;
    }

    @Property(tries = 600, seed = SEED)
    void stiffnessIsTheSlopeOfTheForce(
            @ForAll("laws") SpringLaw law,
            @ForAll @Scale(4) @DoubleRange(min = -0.05, max = 1.2) double share) {
        double x = at(law, share);
        double h = 1e-6 * range(law);
        for (double kink : allKinks(law)) {
            Assume.that(Math.abs(x - kink) > 100 * h);
        }
        double slope = -(law.force(x + h) - law.force(x - h)) / (2 * h);
        double scale = Math.max(law.stiffness(x), law.force(law.limitCoordinate()) / range(law));
        // central difference: h^2 for the step, 1e-10 for the rounding of the two forces
        assertThat(law.stiffness(x)).isCloseTo(slope, within(1e-5 * scale));
    }

    @Property(tries = 600, seed = SEED)
    void forceNeverRisesAsTheSpringOpens(
            @ForAll("laws") SpringLaw law,
            @ForAll @Scale(4) @DoubleRange(min = -0.05, max = 1.3) double a,
            @ForAll @Scale(4) @DoubleRange(min = -0.05, max = 1.3) double b) {
        double low = at(law, Math.min(a, b));
        double high = at(law, Math.max(a, b));
        double rounding = 1e-12 * Math.abs(law.force(law.limitCoordinate()));
        assertThat(law.force(high)).isLessThanOrEqualTo(law.force(low) + rounding);
        assertThat(law.stiffness(low)).isNotNegative();
    }

    @Property(tries = 600, seed = SEED)
    void forceIsContinuousAcrossEveryKink(@ForAll("laws") SpringLaw law) {
        double full = Math.abs(law.force(law.limitCoordinate()));
        double h = 1e-10 * range(law);
        for (double kink : allKinks(law)) {
            double gap = Math.abs(law.force(kink + h) - law.force(kink - h));
            double steepest = Math.max(law.stiffness(kink - h), law.stiffness(kink + h));
            assertThat(gap).isLessThanOrEqualTo(2 * h * steepest * 1.01 + 1e-11 * full);
        }
    }

    @Property(tries = 600, seed = SEED)
    void threeValuesAtOnceAreTheSingleOnes(
            @ForAll("laws") SpringLaw law,
            @ForAll @Scale(4) @DoubleRange(min = -0.05, max = 1.2) double share) {
        SpringPoint out = new SpringPoint();
        double x = at(law, share);
        law.evaluate(x, out);
        assertThat(out.force).isEqualTo(law.force(x));
        assertThat(out.stiffness).isEqualTo(law.stiffness(x));
        assertThat(out.energy).isEqualTo(law.energy(x));
    }

    @Example
    void nothingIsAllocated() {
        SpringLaw law = oneLaw();
        SpringPoint out = new SpringPoint();
        sweep(law, out);
        long before = allocated();
        long idle = allocated() - before;
        before = allocated();
        double sum = sweep(law, out);
        long used = allocated() - before - idle;
        assertThat(sum).isFinite();
        assertThat(used).as("bytes allocated by 30 000 evaluations").isLessThan(1024);
    }

    private static double sweep(SpringLaw law, SpringPoint out) {
        double sum = 0;
        for (int i = 0; i < 30_000; i++) {
            law.evaluate(law.limitCoordinate() + (i / 25_000.0 - 0.05) * range(law), out);
            sum += out.force + out.stiffness + out.energy;
        }
        return sum;
    }

    private static long allocated() {
        return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getCurrentThreadAllocatedBytes();
    }
}
