// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.RouteCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The belts of the demo scenes run and move the tool as their layout should. */
class SceneRoutesTest {
    private static final double RADIUS = 20 * 0.002 / (2 * Math.PI);

    /**
     * Motor turns for a move of the carriage and of the bridge. H and crossed layouts: the first
     * motor turns with x + y, the second with y - x, but for the sense in which each is counted; K.
     * S. Sollmann, M. K. Jouaneh, D. Lavender, IEEE/ASME Trans. Mechatronics 15(2) 2010, 280-290.
     * With separate axes each motor moves one direction only.
     */
    @ParameterizedTest
    @CsvSource({
        "van-bench, 1, 1, 1, 1",
        "class-plotter, 1, 1, 1, 1",
        "class-plotter-skews, 1, 1, 1, 1",
        "field-printer, 0, 1, 1, 0",
        "gantry-one-end, 0, 1, 1, 0",
        "gantry-riding-motors, 0, 1, 1, 0"
    })
    void routesAreConsistentAndMoveTheTool(String scene, double x1, double y1, double x2, double y2)
            throws BadMachineFile {
        BeltLayout layout = GantryAssembly.layout(ScenesTest.scene(scene).gantry().orElseThrow());
        assertThat(RouteCheck.check(layout)).isEmpty();
        MotionRelation relation = RouteCheck.relation(new BeltSystem(layout, IdlerModel.LUMPED));
        // pitch radii in the files are rounded to 0.001 mm
        assertThat(Math.abs(relation.anglePerX(0)) * RADIUS).isCloseTo(x1, within(1e-3));
        assertThat(Math.abs(relation.anglePerY(0)) * RADIUS).isCloseTo(y1, within(1e-3));
        assertThat(Math.abs(relation.anglePerX(1)) * RADIUS).isCloseTo(x2, within(1e-3));
        assertThat(Math.abs(relation.anglePerY(1)) * RADIUS).isCloseTo(y2, within(1e-3));
    }
}
