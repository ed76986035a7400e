// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.replay.Plotters;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The bridge as a beam on its legs against the unit-load theorem: what a load does along another is
 * the integral of both bending moments over EI. Timoshenko, Young, Elements of Strength of
 * Materials, 5th ed., 1968, cited from memory.
 */
class BridgeBeamTest {
    private static final int PIECES = 20_000;

    @ParameterizedTest
    @ValueSource(doubles = {-0.15, -0.04, 0, 0.1})
    void forceAndMomentBendItAsTheUnitLoadTheoremSays(double place) {
        GantryModel model = Plotters.bad();
        GantryKernel kernel = new GantryKernel(model);
        kernel.stand(place, kernel.bridgePlace());
        kernel.evaluate(0);
        double s = kernel.carriagePlace();
        assertThat(s).isCloseTo(place, within(1e-12));
        double[] one = kernel.rail.resistance(1, 0);
        double[] other = kernel.rail.resistance(0, 1);
        double det = one[0] * other[1] - one[1] * other[0];
        double deflection = other[1] / det - 1 / model.carriageGuide().lateralStiffness();
        double cross = -one[1] / det;
        double slope = one[0] / det - 1 / model.carriageGuide().yawStiffness();
        double w = model.bridgeGuide().halfSpan();
        assertThat(deflection).isCloseTo(product(model, w + s, 0, 0), within(1e-6 * deflection));
        assertThat(cross).isCloseTo(product(model, w + s, 0, 1), within(1e-6 * slope * w));
        assertThat(slope).isCloseTo(product(model, w + s, 1, 1), within(1e-6 * slope));
    }

    /** Integral of two bending moments over EI, each of a unit force (0) or moment (1) at a. */
    private static double product(GantryModel model, double a, int first, int second) {
        double span = model.span();
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            double dx = (i < PIECES / 2 ? a : span - a) / (PIECES / 2);
            double x = i < PIECES / 2 ? (i + 0.5) * dx : a + (i - PIECES / 2 + 0.5) * dx;
            sum += dx * bending(span, a, x, first) * bending(span, a, x, second);
        }
        return sum / model.beam();
    }

    /** Bending moment at x of a beam on two supports. */
    private static double bending(double span, double a, double x, int load) {
        double left = load == 0 ? (span - a) / span : -1 / span;
        return x < a ? left * x : load == 0 ? left * x - (x - a) : left * x + 1;
    }
}
