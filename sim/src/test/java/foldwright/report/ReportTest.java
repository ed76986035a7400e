// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.study.Assess;
import foldwright.study.HandRuns;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ReportTest {
    private static String report() throws BadMachineFile {
        Path scene = Path.of("../scenes/van-bench-binds.json");
        return Report.html(
                Assess.machine(MachineFile.read(scene).machine(), new HandRuns(), s -> {}),
                LocalDate.of(2026, 11, 25));
    }

    @Test
    void pageNeedsNothingElse() throws BadMachineFile {
        String html = report();
        assertThat(html).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
        assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(1_000_000);
        assertThat(html).doesNotContain("<script", "http://", "https://", "@import");
        // Six embedded faces, each cut down.
        assertThat(html.split("font/ttf;base64,")).hasSizeGreaterThanOrEqualTo(7);
        assertThat(html).contains("It does not leave the fold.");
        assertThat(html).contains("Cautions", "please measure", "Local codes");
    }

    @Test
    void pageIsTheSameInEveryLocale() throws BadMachineFile {
        String here = report();
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de", "tr"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(report()).isEqualTo(here);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
