// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.cli.Foldwright;
import foldwright.viewer.watch.WatchCommand;
import java.util.Set;
import picocli.CommandLine;

/** Starts the program: the commands of the simulation and the viewer's own. */
public final class Main {
    private static final String WATCH = "watch";

    private Main() {}

    /** The commands of the simulation and the viewer's own. */
    public static CommandLine commandLine() {
        return withWatch(Foldwright.commandLine());
    }

    /** The command that is called, or all of them where the first word is none. */
    static CommandLine commandLine(String first) {
        if (first.equals(WATCH)) {
            return withWatch(Foldwright.commandLine(Set.of()));
        }
        boolean known = Foldwright.commands().contains(first);
        return known ? Foldwright.commandLine(Set.of(first)) : commandLine();
    }

    private static CommandLine withWatch(CommandLine line) {
        Foldwright.add(line, new WatchCommand());
        return line;
    }

    public static void main(String[] args) {
        // Without a command the window opens on a demo machine.
        String[] asked = args.length == 0 ? new String[] {WATCH} : args;
        System.exit(commandLine(asked[0]).execute(asked));
    }
}
