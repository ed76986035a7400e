// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.report.draw.Theme;
import foldwright.viewer.Headless;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.text.TextBox;
import java.util.List;
import java.util.concurrent.Semaphore;
import org.junit.jupiter.api.Test;

/** A window's first picture stands before anything is computed; answers are filled in later. */
class FirstPictureTest {
    private static List<String> drawn(Desk desk, Studio studio) {
        var page = desk.page("lying flat");
        Studio.Look look = Studio.Look.home(Theme.LIGHT);
        studio.drawMachine(page.moment(), look);
        studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
        return studio.boxes().stream().map(TextBox::text).toList();
    }

    @Test
    void standsBeforeTheAnswersAndIsFilledIn() throws Exception {
        Semaphore answers = new Semaphore(0);
        try (GlSurface surface = Headless.open();
                Studio studio = new Studio();
                Desk desk = new Desk(new LiftEngine(), answers::release)) {
            assertThat(surface.renderer()).isNotBlank();
            desk.calculator().hold();
            desk.open(Headless.scene("van-bench"));
            desk.stand(studio);
            studio.size(1280, 720, 1);
            List<String> first = drawn(desk, studio);
            // Once on the scale, once in the opened answer and in the five closed ones.
            assertThat(first).filteredOn("being worked out"::equals).hasSize(7);
            assertThat(first).contains("margin at", "every height", "34.0\u00a0mm");
            assertThat(first)
                    .noneMatch(t -> t.startsWith("arrows") || t.contains("deck and gantry"));
            double flat = desk.height();
            desk.calculator().goOn();
            while (!desk.results().whole()) {
                answers.acquire();
                desk.takeResults();
            }
            List<String> whole = drawn(desk, studio);
            assertThat(whole).doesNotContain("being worked out").contains("Torque at the motor");
            assertThat(desk.height()).isEqualTo(flat);
            glides(desk, flat);
        }
    }

    /** The deck goes to the worst height in small steps and stays where a hand puts it. */
    private static void glides(Desk desk, double flat) {
        double before = flat;
        int steps = 0;
        while (desk.pass(0.02)) {
            assertThat(desk.height()).isBetween(before, before + 0.006);
            before = desk.height();
            steps++;
        }
        assertThat(steps).isBetween(25, 35);
        assertThat(before).isCloseTo(desk.worst().orElseThrow(), within(1e-9));
        desk.height(0.2);
        assertThat(desk.pass(0.02)).isFalse();
        assertThat(desk.height()).isEqualTo(0.2);
    }

    /** A deck taken by hand before the answers come stays where it is. */
    @Test
    void aDeckInTheHandDoesNotGlide() throws Exception {
        Semaphore answers = new Semaphore(0);
        try (Desk desk = new Desk(new LiftEngine(), answers::release)) {
            desk.calculator().hold();
            desk.open(Headless.scene("van-bench"));
            desk.height(0.15);
            desk.calculator().goOn();
            while (!desk.results().whole()) {
                answers.acquire();
                desk.takeResults();
            }
            assertThat(desk.pass(0.02)).isFalse();
            assertThat(desk.height()).isEqualTo(0.15);
        }
    }
}
