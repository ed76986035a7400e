// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.io.PrintWriter;

/**
 * Says on standard error how far a long job is: nothing in the first second, then at most four
 * times a second on a terminal (one line that is overwritten) or every five seconds elsewhere.
 */
final class Progress {
    private static final long SILENT = 1_000_000_000L;
    private static final long ON_TERMINAL = 250_000_000L;
    private static final long ELSEWHERE = 5_000_000_000L;

    private final PrintWriter err;
    private final boolean terminal;
    private final long start = System.nanoTime();
    private long next = start + SILENT;
    private int shown;

    Progress(PrintWriter err) {
        this.err = err;
        terminal = System.console() != null;
    }

    /** Tells that {@code done} of {@code total} of something is finished, e.g. "heights". */
    synchronized void at(long done, long total, String of) {
        say(done + " of " + total + " " + of);
    }

    /** Tells what is being done. */
    synchronized void say(String words) {
        long now = System.nanoTime();
        if (now - next < 0) {
            return;
        }
        next = now + (terminal ? ON_TERMINAL : ELSEWHERE);
        if (terminal) {
            err.print("\r" + words + " ".repeat(Math.max(0, shown - words.length())));
            shown = words.length();
        } else {
            err.println(words);
        }
        err.flush();
    }

    /** Clears the line. */
    synchronized void done() {
        if (shown > 0) {
            err.print("\r" + " ".repeat(shown) + "\r");
            err.flush();
            shown = 0;
        }
    }
}
