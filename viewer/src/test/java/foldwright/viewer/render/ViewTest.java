// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.joml.Matrix4f;
import org.joml.Vector4f;
import org.junit.jupiter.api.Test;

class ViewTest {
    @Test
    void homeIsTrueToScaleAlongAndUpright() {
        View v = new View(View.Stance.home(), 1000, 500, 800);
        assertThat(v.x(0.1, 0, 0) - v.x(0, 0, 0)).isCloseTo(100, offset(1e-9));
        assertThat(v.y(0, 0, 0) - v.y(0, 0, 0.1)).isCloseTo(100, offset(1e-9));
        assertThat(v.x(0, 0, 0.1)).isEqualTo(v.x(0, 0, 0));
    }

    @Test
    void depthGrowsAwayFromTheEyeAlongOneRay() {
        for (View.Stance s :
                new View.Stance[] {
                    View.Stance.home(), View.Stance.above(), View.Stance.home().turned(0.7, 0.2)
                }) {
            View v = new View(s, 1000, 0, 0);
            var d = v.away();
            assertThat(v.x(d.x(), d.y(), d.z())).isCloseTo(v.x(0, 0, 0), offset(1e-9));
            assertThat(v.y(d.x(), d.y(), d.z())).isCloseTo(v.y(0, 0, 0), offset(1e-9));
            assertThat(v.depth(d.x(), d.y(), d.z())).isCloseTo(1, offset(1e-12));
        }
        assertThat(new View(View.Stance.home(), 1, 0, 0).away().z()).isNegative();
    }

    @Test
    void aTurnedViewIsOrthographic() {
        View v = new View(View.Stance.home().turned(0.5, 0.1), 1, 0, 0);
        double[][] axes = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        double sum = 0;
        for (double[] a : axes) {
            double px = v.x(a[0], a[1], a[2]);
            double py = v.y(a[0], a[1], a[2]);
            sum += px * px + py * py;
        }
        // Gauss's theorem of axonometry: squares of the axes' lengths add up to two.
        assertThat(sum).isCloseTo(2, offset(1e-9));
    }

    @Test
    void matrixAgreesWithThePixels() {
        View v = new View(View.Stance.home(), 1700, 400, 700);
        Vector4f p =
                v.matrix(1280, 720, 3, new Matrix4f())
                        .transform(new Vector4f(0.12f, -0.05f, 0.2f, 1));
        assertThat((p.x + 1) * 640).isCloseTo((float) v.x(0.12, -0.05, 0.2), offset(0.01f));
        assertThat((1 - p.y) * 360).isCloseTo((float) v.y(0.12, -0.05, 0.2), offset(0.01f));
    }
}
