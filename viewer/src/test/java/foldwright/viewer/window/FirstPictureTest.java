// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.report.draw.Theme;
import foldwright.study.Check;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.text.TextBox;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A window's first picture waits for no answer but shows one that is there; others follow. */
class FirstPictureTest {
    private static List<String> drawn(Desk desk, Studio studio) {
        var page = desk.page();
        Studio.Look look = Studio.Look.home(Theme.LIGHT);
        Headless.draw(studio, page, look);
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
            assertThat(desk.waiting()).contains("being worked out");
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

    /** A curve that is there before the picture: ink, margins and the answer are in it at once. */
    @Test
    void showsTheAnswerThatIsThere() throws Exception {
        Semaphore answers = new Semaphore(0);
        try (GlSurface surface = Headless.open();
                Studio studio = new Studio();
                Desk desk = new Desk(new LiftEngine(), answers::release)) {
            assertThat(surface.renderer()).isNotBlank();
            desk.calculator().hold();
            desk.open(Headless.scene("van-bench"));
            assertThat(answers.tryAcquire(60, TimeUnit.SECONDS)).isTrue();
            assertThat(desk.takeResults()).isTrue();
            desk.pass(Double.POSITIVE_INFINITY);
            desk.stand(studio);
            studio.size(1280, 720, 1);
            List<String> first = drawn(desk, studio);
            // Only in the five answers that take more than the curve.
            assertThat(first).filteredOn("being worked out"::equals).hasSize(5);
            assertThat(first).contains("Torque at the motor", "rule 1.5×");
            assertThat(first).anyMatch(t -> t.startsWith("arrows"));
            assertThat(desk.waiting()).isEmpty();
            double worst = desk.worst().orElseThrow();
            assertThat(desk.height()).isEqualTo(worst);
            List<Check> early = desk.results().of(Question.FOLD);
            desk.calculator().goOn();
            while (!desk.results().whole()) {
                answers.acquire();
                desk.takeResults();
            }
            assertThat(desk.results().of(Question.FOLD)).hasSameSizeAs(early);
            for (int i = 0; i < early.size(); i++) {
                Check late = desk.results().of(Question.FOLD).get(i);
                assertThat(late.text()).isEqualTo(early.get(i).text());
                assertThat(late.outcome()).isEqualTo(early.get(i).outcome());
            }
            assertThat(desk.pass(0.02)).isFalse();
            assertThat(desk.height()).isEqualTo(worst);
        }
    }

    /** What is still computed of a machine that was left is not shown on the next one. */
    @Test
    void aMachineOpenedNextBringsItsOwnAnswers() throws Exception {
        Semaphore answers = new Semaphore(0);
        try (Desk desk = new Desk(new LiftEngine(), answers::release)) {
            desk.calculator().hold();
            desk.open(Headless.scene("van-bench"));
            assertThat(answers.tryAcquire(60, TimeUnit.SECONDS)).isTrue();
            desk.open(Headless.scene("class-plotter"));
            assertThat(desk.takeResults()).isFalse();
            assertThat(desk.results().curve()).isEmpty();
            desk.calculator().goOn();
            while (!desk.results().whole()) {
                answers.acquire();
                desk.takeResults();
            }
            assertThat(desk.waiting()).isEmpty();
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
