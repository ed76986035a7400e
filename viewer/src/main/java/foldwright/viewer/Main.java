// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.cli.Foldwright;
import foldwright.viewer.watch.WatchCommand;
import picocli.CommandLine;

/** Starts the program: the commands of the simulation and the viewer's own. */
public final class Main {
    private Main() {}

    /** The commands of the simulation and the viewer's own. */
    public static CommandLine commandLine() {
        CommandLine line = Foldwright.commandLine();
        line.addSubcommand(new WatchCommand());
        CommandLine watch = line.getSubcommands().get("watch");
        watch.setOut(line.getOut());
        watch.setErr(line.getErr());
        watch.setCaseInsensitiveEnumValuesAllowed(true);
        watch.setUsageHelpWidth(100);
        return line;
    }

    public static void main(String[] args) {
        // Without a command the window opens on a demo machine.
        String[] asked = args.length == 0 ? new String[] {"watch"} : args;
        System.exit(commandLine().execute(asked));
    }
}
