// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Batch;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A picked pixel against a ray of its own: the nearest triangle of all parts below the pixel. Coils
 * bend on the graphics side and are left out, and so are pixels at a border.
 */
class PickTest {
    @ParameterizedTest
    @MethodSource("foldwright.viewer.Headless#scenes")
    void pickedPixelsKnowTheirParts(String name) {
        try (Headless.Room room = Headless.studio()) {
            Studio studio = room.studio();
            studio.machine(new MachineScene(Headless.machine(name)));
            studio.size(1280, 720, 1);
            var shape = studio.scene().shape();
            SheetBuilder.Page page =
                    new SheetBuilder(studio.scene())
                            .page(
                                    Results.NONE,
                                    SheetBuilder.Choice.of(
                                            Question.FOLD, 0.4 * shape.flat() + 0.6 * shape.top()),
                                    Sample.rules(),
                                    new SheetBuilder.Words(
                                            "", Optional.empty(), "", Optional.empty()));
            studio.drawMachine(page.moment(), Studio.Look.home(Theme.LIGHT));
            int right = 0;
            for (int y = 120; y < 590; y += 13) {
                for (int x = 40; x < 640; x += 17) {
                    int id = ray(studio, x, y);
                    boolean border = false;
                    for (int k = 0; k < 4; k++) {
                        double a = 1.5 * (k % 2 == 0 ? 1 : -1);
                        double b = 1.5 * (k / 2 == 0 ? 1 : -1);
                        border |= ray(studio, x + a, y + b) != id;
                    }
                    int picked = studio.pick(x, y);
                    boolean coil =
                            studio.scene()
                                    .part(picked)
                                    .filter(p -> p.mesh().coil() != null)
                                    .isPresent();
                    if (id == 0 || border || coil) {
                        continue;
                    }
                    assertThat(picked).as(name + " at " + x + ", " + y).isEqualTo(id);
                    right++;
                }
            }
            assertThat(right).isGreaterThan(20);
        }
    }

    /** Id of the part whose triangle is nearest below a point of the picture, 0 for none. */
    private static int ray(Studio studio, double px, double py) {
        View v = studio.view();
        double nearest = Double.MAX_VALUE;
        int id = 0;
        double[] sx = new double[3];
        double[] sy = new double[3];
        double[] sz = new double[3];
        for (Batch batch : studio.scene().batches()) {
            if (batch.mesh.coil() != null) {
                continue;
            }
            float[] p = batch.mesh.vertices();
            int[] index = batch.mesh.indices();
            for (int i = 0; i < batch.count; i++) {
                int r = i * Batch.FLOATS;
                float[] m = batch.data;
                for (int t = 0; t < index.length; t += 3) {
                    for (int k = 0; k < 3; k++) {
                        int at = index[t + k] * foldwright.viewer.mesh.Mesh.VERTEX_FLOATS;
                        double x =
                                m[r] * p[at]
                                        + m[r + 1] * p[at + 1]
                                        + m[r + 2] * p[at + 2]
                                        + m[r + 3];
                        double y =
                                m[r + 4] * p[at]
                                        + m[r + 5] * p[at + 1]
                                        + m[r + 6] * p[at + 2]
                                        + m[r + 7];
                        double z =
                                m[r + 8] * p[at]
                                        + m[r + 9] * p[at + 1]
                                        + m[r + 10] * p[at + 2]
                                        + m[r + 11];
                        sx[k] = v.x(x, y, z);
                        sy[k] = v.y(x, y, z);
                        sz[k] = v.depth(x, y, z);
                    }
                    double depth = depth(sx, sy, sz, px + 0.5, py + 0.5);
                    if (depth < nearest) {
                        nearest = depth;
                        id = Math.round(m[r + Batch.EXTRA]);
                    }
                }
            }
        }
        return id;
    }

    private static double depth(double[] x, double[] y, double[] z, double px, double py) {
        double d = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
        if (Math.abs(d) < 1e-9) {
            return Double.MAX_VALUE;
        }
        double a = ((px - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (py - y[0])) / d;
        double b = ((x[1] - x[0]) * (py - y[0]) - (px - x[0]) * (y[1] - y[0])) / d;
        return a < 0 || b < 0 || a + b > 1
                ? Double.MAX_VALUE
                : z[0] + a * (z[1] - z[0]) + b * (z[2] - z[0]);
    }
}
