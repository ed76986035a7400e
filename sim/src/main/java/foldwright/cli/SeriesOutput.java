// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options for results of a run: {@code --json}, {@code --csv}, {@code --svg}. */
final class SeriesOutput {
    @Mixin private JsonOption json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Write the series to FILE, comma-separated, units in the header.")
    private Path csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "Write the plot to FILE.")
    private Path svg;

    JsonOption json() {
        return json;
    }

    /** Refuses places that cannot be written, before the run. */
    void check() {
        if (csv != null) {
            Outputs.check(csv);
        }
        if (svg != null) {
            Outputs.check(svg);
        }
        if (csv != null && csv.equals(svg)) {
            throw new BadInput(csv + ": is named for both --csv and --svg");
        }
    }

    /** Writes the files that were asked for, all or none. */
    void write(Supplier<String> csvText, Supplier<String> svgText) {
        Outputs outputs = new Outputs();
        if (csv != null) {
            outputs.add(csv, csvText.get());
        }
        if (svg != null) {
            outputs.add(svg, svgText.get());
        }
        outputs.write();
    }
}
