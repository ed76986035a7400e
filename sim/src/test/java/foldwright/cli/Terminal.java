// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/** Runs the program inside a test, as a shell without a terminal would. */
final class Terminal {
    private Terminal() {}

    /** What a command returned and printed. */
    record Result(int exit, String out, String err) {}

    static Result run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Foldwright.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        int exit = line.execute(args);
        return new Result(exit, out.toString(), err.toString());
    }
}
