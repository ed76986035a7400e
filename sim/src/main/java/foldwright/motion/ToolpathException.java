// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.Locale;
import java.util.Objects;

/**
 * A toolpath that cannot be replayed from some line on: says where, what was read and what is
 * allowed.
 */
public final class ToolpathException extends Exception {
    private static final long serialVersionUID = 1L;

    /** What kind of fault it is; tests and programs ask for this, people read the message. */
    public enum Fault {
        UNREADABLE,
        LINE_TOO_LONG,
        BAD_NUMBER,
        BAD_CHARACTER,
        OPEN_COMMENT,
        NESTED_COMMENT,
        REPEATED_WORD,
        SAME_GROUP,
        TOO_MANY_WORDS,
        CHECKSUM,
        OUTSIDE_SUBSET,
        NO_MOTION_MODE,
        NO_AXIS_WORD,
        BAD_ARC,
        BAD_DWELL,
        BAD_FEED,
        OUT_OF_REACH,
        BAD_POINT
    }

    private final Fault fault;
    private final long line;

    /**
     * @param line 1-based line of the toolpath
     * @param found what was read there
     * @param allowed what would have been accepted
     */
    public ToolpathException(Fault fault, long line, String found, String allowed) {
        super(
                String.format(
                        Locale.ROOT, "line %s: %s; allowed: %s", grouped(line), found, allowed));
        this.fault = Objects.requireNonNull(fault, "fault");
        this.line = line;
    }

    public Fault fault() {
        return fault;
    }

    /** 1-based line of the toolpath. */
    public long line() {
        return line;
    }

    private static String grouped(long line) {
        return String.format(Locale.ROOT, "%,d", line).replace(',', ' ');
    }
}
