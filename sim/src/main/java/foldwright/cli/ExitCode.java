// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

/** What a command returns to the shell. */
public final class ExitCode {
    /** Everything asked for holds. */
    public static final int HOLDS = 0;

    /** Something fails its verdict, or a run could not be finished. */
    public static final int FAILS = 1;

    /** The input cannot be used, or an output cannot be written. */
    public static final int BAD_INPUT = 2;

    /** A fault of the program itself. */
    public static final int FAULT = 3;

    private ExitCode() {}
}
