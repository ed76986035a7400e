// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The root command: it only holds the others. */
@Command(
        name = "foldwright",
        description = "Motion simulator for small machines that fold flat.",
        mixinStandardHelpOptions = true,
        version = "foldwright 0.1.0")
public final class Foldwright {
    private Foldwright() {}

    /** Every command of this module; the viewer adds its own before it runs them. */
    public static CommandLine commandLine() {
        return new CommandLine(new Foldwright());
    }
}
