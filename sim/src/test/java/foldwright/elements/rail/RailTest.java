// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.rail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Rails; the worked examples are in the proof chapter. */
class RailTest {
    private static final String SEED = "20261125";

    @Property(tries = 500, seed = SEED)
    void reactionsBalanceForceAndMoment(
            @ForAll @Scale(4) @DoubleRange(min = -100, max = 100) double force,
            @ForAll @Scale(4) @DoubleRange(min = -0.5, max = 0.5) double arm,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.3) double spacing) {
        BlockRow row = new BlockRow(1e7, 0.02, spacing, 0);
        double near = row.nearReaction(force, arm);
        double far = row.farReaction(force, arm);
        assertThat(near + far).isCloseTo(force, within(1e-9));
        assertThat((near - far) * spacing / 2).isCloseTo(force * arm, within(1e-9));
    }

    /** Independent of the closed form: 1000 little springs along each block. */
    @Property(tries = 100, seed = SEED)
    void yawStiffnessIsThatOfSpringsInARow(
            @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.05) double length,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.2) double spacing) {
        BlockRow row = new BlockRow(2e7, length, spacing, 0);
        double sum = 0;
        int parts = 1000;
        for (int block = 0; block < row.blocks(); block++) {
            double centre = row.blocks() == 1 ? 0 : (block - 0.5) * spacing;
            for (int i = 0; i < parts; i++) {
                double at = centre + length * ((i + 0.5) / parts - 0.5);
                sum += 2e7 / parts * at * at;
            }
        }
        assertThat(row.yawStiffness()).isCloseTo(sum, within(1e-5 * sum));
    }

    @Test
    void ratingsOfTheTableFitTheirPlausibilityRule() {
        // own rule beside the ratings: Mx0 near C0 w/2, My0 near C0 l/6, up to 40 % below
        for (RailSize size : RailSize.catalog().all()) {
            BlockRating r = size.rating();
            RailSize.Dimensions d = size.dimensions();
            BlockRating rule =
                    BlockRating.withoutMoments(
                            r.dynamicRating(), r.staticRating(), d.railWidth(), d.steelLength());
            assertThat(r.rollRating() / rule.rollRating()).isBetween(0.6, 1.05);
            assertThat(r.pitchRating() / rule.pitchRating()).isBetween(0.6, 1.05);
        }
    }

    @Test
    void lifeUsesTheCubeAndItsBaseOf100Km() {
        BlockRating r = RailSize.get("9 short").rating();
        BlockLoad full = new BlockLoad(r.dynamicRating(), 0, 0, 0, 0);
        assertThat(r.life(full)).isCloseTo(100e3, within(1e-6));
        assertThat(r.life(new BlockLoad(r.dynamicRating() / 2, 0, 0, 0, 0)))
                .isCloseTo(800e3, within(1e-3));
        // ISO 14728-1: C50 = 1.26 C100
        assertThat(r.ratingFor50Km() / r.dynamicRating()).isCloseTo(1.26, within(0.001));
    }

    @Test
    void singleBlockHasNothingToSplit() {
        BlockRow one = new BlockRow(1e7, 0.02, 0, 0);
        assertThatThrownBy(() -> one.nearReaction(10, 0.1))
                .isInstanceOf(IllegalStateException.class);
        assertThat(RailSize.find("10 short")).isEmpty();
        assertThatThrownBy(() -> RailSize.get("9 shrt")).hasMessageContaining("9 short");
    }
}
