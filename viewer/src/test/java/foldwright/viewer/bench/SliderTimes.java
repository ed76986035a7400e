// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.bench;

import foldwright.report.draw.Theme;
import foldwright.viewer.Headless;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.window.CannotOpenException;
import foldwright.viewer.window.Desk;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import org.lwjgl.opengl.GL33C;

/**
 * Times a number being dragged: from the value tried to curve, ribbon and verdict of the machine
 * with that number, and further to the picture of them. Each round waits for its own answer, so
 * nothing is skipped. Printed beside a loop of dependent multiply-adds of the same run. Started by
 * {@code tools/frame-times slider}.
 */
public final class SliderTimes {
    private static final int ROUNDS = 60;
    private static final int WARM = 60;

    private SliderTimes() {}

    public static void main(String[] args) throws CannotOpenException, InterruptedException {
        System.out.printf(
                Locale.ROOT, "reference: %.2f ns a dependent multiply-add%n", multiplyAdd());
        Semaphore answers = new Semaphore(0);
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio();
                Desk desk = new Desk(new LiftEngine(), answers::release)) {
            System.out.println(surface.renderer());
            desk.open(Headless.scene("van-bench"));
            while (!desk.results().whole()) {
                answers.acquire();
                desk.takeResults();
            }
            studio.machine(desk.scene());
            studio.size(1280, 720, 1);
            System.out.printf(
                    Locale.ROOT,
                    "%-22s %10s %8s %12s %8s   ms, %d values%n",
                    "number",
                    "answer",
                    "p95",
                    "and picture",
                    "p95",
                    ROUNDS);
            for (Dial dial : desk.dials()) {
                one(desk, dial, studio, answers);
            }
        }
    }

    private static void one(Desk desk, Dial dial, Studio studio, Semaphore answers)
            throws InterruptedException {
        double own = desk.value(dial);
        double[] answer = new double[ROUNDS];
        double[] picture = new double[ROUNDS];
        for (int i = -WARM; i < ROUNDS; i++) {
            double share = 0.1 + 0.8 * (i + WARM) / (ROUNDS + WARM);
            long start = System.nanoTime();
            await(desk, dial, dial.low() + share * (dial.high() - dial.low()), answers);
            long known = System.nanoTime();
            draw(desk, studio);
            if (i >= 0) {
                answer[i] = (known - start) / 1e6;
                picture[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        await(desk, dial, own, answers);
        Arrays.sort(answer);
        Arrays.sort(picture);
        System.out.printf(
                Locale.ROOT,
                "%-22s %10.1f %8.1f %12.1f %8.1f%n",
                dial.name(),
                answer[ROUNDS / 2],
                answer[ROUNDS * 95 / 100],
                picture[ROUNDS / 2],
                picture[ROUNDS * 95 / 100]);
    }

    private static void await(Desk desk, Dial dial, double value, Semaphore answers)
            throws InterruptedException {
        Object before = desk.results();
        answers.drainPermits();
        desk.tryValue(dial, value);
        while (desk.results() == before) {
            answers.acquire();
            desk.takeResults();
        }
    }

    private static void draw(Desk desk, Studio studio) {
        var page = desk.page();
        Studio.Look look = Studio.Look.home(Theme.LIGHT).at(MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, look);
        GL33C.glFinish();
    }

    private static double multiplyAdd() {
        double best = Double.MAX_VALUE;
        double x = 0.5;
        for (int round = 0; round < 20; round++) {
            long start = System.nanoTime();
            for (int i = 0; i < 5_000_000; i++) {
                x = x * 0.999_999 + 1e-6;
            }
            best = Math.min(best, (System.nanoTime() - start) / 5e6);
        }
        if (x == 0) {
            throw new IllegalStateException("the loop was taken away");
        }
        return best;
    }
}
