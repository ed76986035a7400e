// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.proof.GantryCases;
import org.junit.jupiter.api.Test;

/** A cycloidal move along the bridge: largest skew, largest tool error, what rings on after it. */
class LinearResponseTest {
    private record Result(double skew, double toolX, double after) {}

    private static Result run(GantryModel model, GantryCases c, double d, double t) {
        LinearResponse response = new LinearResponse(model, c.x(), c.y(), 0.02);
        double[] worst = new double[3];
        double w = 2 * Math.PI / t;
        double h = 1e-4;
        response.alongBridge(
                time -> time < t ? d / t * w * Math.sin(w * time) : 0,
                h,
                (int) Math.round(3 * t / h),
                p -> {
                    worst[0] = Math.abs(p.skew()) > Math.abs(worst[0]) ? p.skew() : worst[0];
                    worst[1] = Math.abs(p.toolX()) > Math.abs(worst[1]) ? p.toolX() : worst[1];
                    if (p.time() >= t) {
                        worst[2] = Math.max(worst[2], Math.abs(p.toolX()));
                    }
                });
        return new Result(worst[0], worst[1], worst[2]);
    }

    private static void agree(Result r, double skew, double toolX, double after) {
        assertThat(r.skew).isCloseTo(skew, within(1e-4 * Math.abs(skew)));
        assertThat(r.toolX).isCloseTo(toolX, within(1e-4 * Math.abs(toolX)));
        assertThat(r.after).isCloseTo(after, within(1e-4 * after));
    }

    @Test
    void singleLoop() {
        GantryCases c = GantryCases.S1;
        agree(
                run(c.singleLoop(GantryCases.POINT), c, 0.04, 0.1),
                -0.000169529,
                -0.000183407,
                2.57155e-05);
        c = GantryCases.S2;
        agree(
                run(c.singleLoop(GantryCases.POINT), c, 0.03, 0.08),
                0.000181681,
                0.000160603,
                2.36004e-05);
    }

    @Test
    void crossed() {
        GantryCases c = GantryCases.S1;
        agree(
                run(c.crossed(GantryCases.POINT), c, 0.04, 0.1),
                -5.26206e-05,
                -0.000123386,
                1.96079e-05);
        c = GantryCases.S2;
        agree(
                run(c.crossed(GantryCases.POINT), c, 0.03, 0.08),
                8.1048e-05,
                0.000123794,
                1.19544e-05);
    }
}
