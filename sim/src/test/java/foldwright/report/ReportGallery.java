// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.machine.file.MachineFile;
import foldwright.study.Assess;
import foldwright.study.HandRuns;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/** Writes reports of machine files with the runs of {@link HandRuns}, to look at. */
final class ReportGallery {
    private ReportGallery() {}

    public static void main(String[] args) throws Exception {
        for (int i = 1; i < args.length; i++) {
            Path file = Path.of(args[i]);
            String html =
                    Report.html(
                            Assess.machine(
                                    MachineFile.read(file).machine(), new HandRuns(), s -> {}),
                            LocalDate.of(2026, 11, 25));
            Files.createDirectories(Path.of(args[0]));
            String name = file.getFileName().toString().replace(".json", ".html");
            Files.writeString(Path.of(args[0]).resolve(name), html);
        }
    }
}
