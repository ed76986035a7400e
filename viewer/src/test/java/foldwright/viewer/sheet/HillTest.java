// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.study.Verdict;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.StudioTest;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.SheetBuilder;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The hills over the rules tell where a number fails, and where no machine can be. */
class HillTest extends StudioTest {
    @BeforeAll
    static void stand() {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        studio.size(1280, 720, 1);
    }

    @Test
    void aNumberThatFailsEverywhereIsHatchedAndOneWithoutAMachineIsBare() {
        int none = failing(Double.NaN);
        int nothing = failing(0);
        int little = failing(0.6);
        assertThat(none).isZero();
        assertThat(nothing).isGreaterThan(100);
        assertThat(little).isGreaterThan(nothing);
        assertThat(failing(1)).isZero();
    }

    /** Red pixels among the rules (only a failure is red), with one margin over a whole rule. */
    private static int failing(double margin) {
        SheetModel.Rule rule =
                new SheetModel.Rule(
                        "thread friction",
                        "0.15",
                        "0.05",
                        "0.25",
                        0.5,
                        Optional.empty(),
                        "",
                        new SheetModel.Hill(Collections.nCopies(9, margin), Verdict.RULE));
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                Sample.results(studio.scene().machine()),
                                SheetBuilder.Choice.of(Question.FOLD, 0.1),
                                List.of(rule),
                                new SheetBuilder.Words(
                                        "as in the file",
                                        Optional.empty(),
                                        "18.8 s of 60 s",
                                        Optional.empty()));
        Studio.Look look = Studio.Look.home(Theme.LIGHT);
        Headless.draw(studio, page, look);
        int count = 0;
        try (Pixels pixels = studio.pixels()) {
            for (int y = 620; y < pixels.height; y++) {
                for (int x = 0; x < 900; x++) {
                    int rgb = pixels.rgb(x, y);
                    count += (rgb >> 16 & 255) - (rgb >> 8 & 255) > 60 ? 1 : 0;
                }
            }
        }
        return count;
    }
}
