// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Cuts a stream into lines without making strings; CR, LF and CR LF end a line, a last line may
 * lack its end.
 */
final class ByteLines {
    /** Longer lines are refused: no toolpath has them, and a binary file read by mistake does. */
    static final int LONGEST = 1 << 16;

    private final InputStream in;
    private byte[] buffer = new byte[1 << 16];
    private int filled;
    private int start;
    private int end;
    private int next;
    private long number;
    private boolean exhausted;

    ByteLines(InputStream in) {
        this.in = in;
    }

    /** Moves to the next line; false at the end of the stream. */
    boolean advance() throws ToolpathException {
        start = next;
        int scan = start;
        while (true) {
            byte[] b = buffer;
            int last = filled;
            // Both ends of a line are below every printed character: one look a byte.
            while (scan < last && (b[scan] > '\r' || b[scan] != '\n' && b[scan] != '\r')) {
                scan++;
            }
            if (scan < last && !(b[scan] == '\r' && scan + 1 == last && !exhausted)) {
                end = scan;
                next =
                        b[scan] == '\r' && scan + 1 < last && b[scan + 1] == '\n'
                                ? scan + 2
                                : scan + 1;
                number++;
                return true;
            }
            if (exhausted) {
                end = last;
                next = last;
                if (end > start) {
                    number++;
                }
                return end > start;
            }
            int read = scan - start;
            refill();
            scan = start + read;
        }
    }

    private void refill() throws ToolpathException {
        if (start > 0) {
            System.arraycopy(buffer, start, buffer, 0, filled - start);
            filled -= start;
            start = 0;
        }
        if (filled == buffer.length) {
            if (filled > LONGEST) {
                throw new ToolpathException(
                        ToolpathException.Fault.LINE_TOO_LONG,
                        number + 1,
                        "a line of more than 65 536 bytes (is this a text file?)",
                        "at most 65 536 bytes a line");
            }
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        try {
            int got = in.read(buffer, filled, buffer.length - filled);
            if (got < 0) {
                exhausted = true;
            } else {
                filled += got;
            }
        } catch (IOException e) {
            throw new ToolpathException(
                    ToolpathException.Fault.UNREADABLE,
                    number + 1,
                    "the file could not be read on (" + e.getMessage() + ")",
                    "a readable file");
        }
    }

    /** The bytes that hold the line; only {@link #from()} to {@link #to()} belong to it. */
    byte[] bytes() {
        return buffer;
    }

    int from() {
        return start;
    }

    int to() {
        return end;
    }

    /** 1-based number of the line. */
    long number() {
        return number;
    }

    /**
     * The line as a person reads it, cut after 60 characters; bytes that cannot be printed become
     * dots.
     */
    String text() {
        int stop = Math.min(end, start + 60);
        StringBuilder text =
                new StringBuilder(
                        new String(buffer, start, stop - start, StandardCharsets.ISO_8859_1));
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~') {
                text.setCharAt(i, '.');
            }
        }
        return stop < end ? text + "..." : text.toString();
    }

    /** A fault in the present line, which it quotes. */
    ToolpathException fault(ToolpathException.Fault kind, String found, String allowed) {
        return new ToolpathException(kind, number, found + " in \"" + text() + "\"", allowed);
    }
}
