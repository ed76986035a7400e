// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.cli.Foldwright;

/** Starts the program: the commands of the simulation and the viewer's own. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(Foldwright.commandLine().execute(args));
    }
}
