// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Solids are closed and turned outward: the volume enclosed by their triangles (divergence theorem)
 * is the closed form.
 */
class SolidTest {
    private static double volume(Mesh mesh) {
        float[] v = mesh.vertices();
        int[] i = mesh.indices();
        double sum = 0;
        for (int t = 0; t < i.length; t += 3) {
            int a = i[t] * Mesh.VERTEX_FLOATS;
            int b = i[t + 1] * Mesh.VERTEX_FLOATS;
            int c = i[t + 2] * Mesh.VERTEX_FLOATS;
            sum +=
                    v[a] * (v[b + 1] * v[c + 2] - v[b + 2] * v[c + 1])
                            + v[a + 1] * (v[b + 2] * v[c] - v[b] * v[c + 2])
                            + v[a + 2] * (v[b] * v[c + 1] - v[b + 1] * v[c]);
        }
        return sum / 6;
    }

    /** Every edge of a closed surface is walked once each way. */
    private static void assertClosed(Mesh mesh) {
        Map<String, Integer> walked = new HashMap<>();
        float[] v = mesh.vertices();
        int[] i = mesh.indices();
        for (int t = 0; t < i.length; t += 3) {
            for (int k = 0; k < 3; k++) {
                String from = point(v, i[t + k]);
                String to = point(v, i[t + (k + 1) % 3]);
                walked.merge(from + ">" + to, 1, Integer::sum);
                walked.merge(to + ">" + from, -1, Integer::sum);
            }
        }
        assertThat(walked.values()).allMatch(n -> n == 0);
    }

    private static String point(float[] v, int index) {
        int at = index * Mesh.VERTEX_FLOATS;
        return Math.round(v[at] * 1e6)
                + ","
                + Math.round(v[at + 1] * 1e6)
                + ","
                + Math.round(v[at + 2] * 1e6);
    }

    @Test
    void box() {
        Mesh mesh = new Solid().box(0, 0, 0, 0.2, 0.3, 0.05).mesh();
        assertClosed(mesh);
        assertThat(volume(mesh)).isCloseTo(0.2 * 0.3 * 0.05, offset(1e-9));
        assertThat(mesh.edgeCount()).isEqualTo(12);
    }

    @Test
    void barTurnedToEachAxis() {
        int sides = 32;
        double area = 0.5 * sides * 0.01 * 0.01 * Math.sin(2 * Math.PI / sides);
        for (Solid solid : new Solid[] {new Solid(), new Solid().alongX(), new Solid().alongY()}) {
            Mesh mesh = solid.bar(0.01, 0, 0.1, sides).mesh();
            assertClosed(mesh);
            assertThat(volume(mesh)).isCloseTo(area * 0.1, offset(1e-10));
        }
    }

    @Test
    void ringIsTheDifferenceOfTwoBars() {
        Mesh mesh = new Solid().ring(0.02, 0.01, 0, 0.005, 24).mesh();
        assertClosed(mesh);
        double area = 0.5 * 24 * Math.sin(2 * Math.PI / 24) * (0.02 * 0.02 - 0.01 * 0.01);
        assertThat(volume(mesh)).isCloseTo(area * 0.005, offset(1e-10));
    }

    @Test
    void linkIsARectangleWithRoundEnds() {
        Mesh mesh = new Solid().link(0.19, 0.016, -0.003, 0.003).mesh();
        assertClosed(mesh);
        // Two half circles of 8 chords each.
        double ends = 0.5 * 16 * Math.sin(2 * Math.PI / 16) * 0.008 * 0.008;
        assertThat(volume(mesh)).isCloseTo((0.19 * 0.016 + ends) * 0.006, offset(1e-10));
    }

    @Test
    void endsOfALinkLieAtWayZeroAndOneOfItsPins() {
        Mesh mesh = new Solid().along(0, 0.19).link(0.19, 0.016, -0.003, 0.003).mesh();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            float x = mesh.vertices()[v * Mesh.VERTEX_FLOATS];
            float way = mesh.vertices()[v * Mesh.VERTEX_FLOATS + 7];
            assertThat((double) way).isCloseTo(x / 0.19, offset(1e-6));
        }
    }
}
