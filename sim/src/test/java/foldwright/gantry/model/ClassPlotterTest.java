// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.RouteCheck;
import foldwright.machine.file.MachineFile;
import foldwright.machine.gantry.Gantry;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The class plotter, carriage in the middle of the bridge, no rail friction: M = m a B/2, skew end
 * to end = B (play + M/K). Hand sums on the machine's own numbers.
 */
class ClassPlotterTest {
    private static Gantry scene(String name) throws Exception {
        Path file = Path.of("..", "scenes", name + ".json");
        return MachineFile.read(file).machine().gantry().orElseThrow();
    }

    private static GantryState at(Gantry gantry, double acceleration) {
        return at(GantryAssembly.of(gantry).weightlessIdlers().weightlessBelts(), acceleration);
    }

    private static GantryState at(GantryModel model, double acceleration) {
        double x = model.layout().travel().xMid();
        double y = model.layout().travel().yMid();
        return new Statics(model, Statics.Hold.FIELDS)
                .settle(x, y, Load.accelerating(acceleration, 0));
    }

    @Test
    void badBuildShowsPlayAndFlex() throws Exception {
        Gantry gantry = scene("class-plotter-skews");
        GantryState s = at(gantry, 4);
        double span = 0.44;
        assertThat(Math.abs(s.endToEnd())).isCloseTo(0.915e-3, within(0.01 * 0.915e-3));
        double free = GantryAssembly.of(gantry).bridgeGuide().freeYaw();
        assertThat(free * span).isCloseTo(0.176e-3, within(0.01 * 0.176e-3));
        assertThat(Math.abs(s.endToEnd()) - free * span)
                .isCloseTo(0.740e-3, within(0.01 * 0.740e-3));
        double[][] series = {{0, 0}, {1, .361e-3}, {2, .546e-3}, {6, 1.285e-3}};
        for (double[] pair : series) {
            assertThat(Math.abs(at(gantry, pair[0]).endToEnd()))
                    .isCloseTo(pair[1], within(0.01 * pair[1] + 1e-8));
        }
    }

    @Test
    void curedBuild() throws Exception {
        Gantry gantry = scene("class-plotter");
        double skew = Math.abs(at(gantry, 4).endToEnd());
        // Printed as 0.023; 0.42 kg x 4 m/s2 x 0.22 m x 0.44 m / 7200 N m/rad = 0.022587 mm.
        assertThat(skew).isCloseTo(0.022587e-3, within(0.01 * 0.022587e-3));
    }

    /**
     * Racking needs what pulls at the ends of the bridge: the carriage and, per wheel at an end, J
     * over r squared. The two idlers behind turn with the motors, and rack nothing. Lumped idlers
     * settle as those that are states.
     */
    @Test
    void fourIdlersOnTheBridgeAddToTheHandSum() throws Exception {
        GantryModel model = GantryAssembly.of(scene("class-plotter")).weightlessBelts();
        double with = at(model, 4).skew();
        double without = at(model.weightlessIdlers(), 4).skew();
        double states = at(model.with(IdlerModel.STATES), 4).skew();
        double r = 20 * 0.002 / (2 * Math.PI);
        double hand = 1 + 4 * 3e-7 / (r * r) / 0.42;
        assertThat(with / without).isCloseTo(hand, within(2e-3));
        assertThat(states / without).isCloseTo(with / without, within(3e-3));
    }

    /** What the belts add to the published figures: strands along the bridge, 4 w of them. */
    @Test
    void beltsAddToTheHandSum() throws Exception {
        GantryModel model = GantryAssembly.of(scene("class-plotter")).weightlessIdlers();
        double with = at(model, 4).skew();
        double without = at(model.weightlessBelts(), 4).skew();
        double perLength = model.layout().belts().get(0).linearMass();
        assertThat(with / without).isCloseTo(1 + 4 * 0.22 * perLength / 0.42, within(2e-3));
    }

    @Test
    void scenesHaveSoundRoutes() throws Exception {
        for (String name :
                new String[] {
                    "class-plotter", "class-plotter-skews", "van-bench", "field-printer"
                }) {
            assertThat(RouteCheck.check(GantryAssembly.layout(scene(name)))).as(name).isEmpty();
            GantryModel model = GantryAssembly.of(scene(name));
            assertThat(new GantryKernel(model).belts.constant).as(name).isTrue();
        }
    }

    @Test
    void accelerationsInBothDirectionsMirror() throws Exception {
        Gantry gantry = scene("class-plotter-skews");
        GantryState right = at(gantry, 4);
        GantryState left = at(gantry, -4);
        assertThat(left.skew()).isEqualTo(-right.skew());
    }
}
