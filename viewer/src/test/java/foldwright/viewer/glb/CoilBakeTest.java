// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.viewer.mesh.CoilMesh;
import foldwright.viewer.mesh.Mesh;
import org.junit.jupiter.api.Test;

/** Coils in models: what lies on one another is as far apart as round wire on a cone can be. */
class CoilBakeTest {
    private static final double WIRE = 2e-3;
    private static final double LENGTH = 40e-3;

    /** Eight turns, six of them live, from 20 mm to 11 mm of radius: 1.5 mm a turn. */
    private static final Mesh CONE = CoilMesh.of(new Mesh.Coil(8, 20e-3, 11e-3, WIRE / 2));

    /** Height of the middle of the wire after some turns [m]. */
    private static double height(float[] baked, double turns) {
        float[] plain = CONE.vertices();
        double sum = 0;
        int count = 0;
        for (int i = 0; i < plain.length; i += Mesh.VERTEX_FLOATS) {
            if (Math.abs(8 * plain[i] - turns) < 1e-4) {
                sum += baked[i + 2];
                count++;
            }
        }
        assertThat(count).isGreaterThan(2);
        return sum / count;
    }

    @Test
    void closedTurnsLieOnOneAnotherAndTheRestShareTheLength() {
        // At 15.5 mm of radius coils just touch: three of the live turns are closed.
        float[] baked = CoilBake.vertices(CONE, LENGTH, 15.5e-3);
        double on = Math.sqrt(WIRE * WIRE - 1.5e-3 * 1.5e-3);
        assertThat(height(baked, 2) - height(baked, 1)).isCloseTo(on, within(1e-6));
        assertThat(height(baked, 4) - height(baked, 3)).isCloseTo(on, within(1e-6));
        double fifth = height(baked, 5) - height(baked, 4);
        double last = height(baked, 7) - height(baked, 6);
        assertThat(fifth).isGreaterThan(on);
        assertThat(last).isGreaterThan(fifth);
    }

    @Test
    void itIsAsLongAsItIsSaidToBe() {
        for (double touch : new double[] {15.5e-3, 25e-3, 1}) {
            float[] baked = CoilBake.vertices(CONE, LENGTH, touch);
            assertThat(height(baked, 0)).isCloseTo(WIRE / 2, within(1e-6));
            assertThat(height(baked, 8)).isCloseTo(LENGTH - WIRE / 2, within(1e-6));
        }
    }
}
