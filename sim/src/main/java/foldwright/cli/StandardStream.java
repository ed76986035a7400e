// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Standard output or error: UTF-8, but plain ASCII on a terminal that says it shows no more. Keeps
 * the first failure of a write, which a print writer would swallow.
 */
final class StandardStream extends FilterWriter {
    private IOException failure;

    StandardStream(Writer to) {
        super(to);
    }

    /** Standard output. */
    static StandardStream out() {
        return new StandardStream(terminal(FileDescriptor.out));
    }

    /** Standard error. */
    static StandardStream err() {
        return new StandardStream(terminal(FileDescriptor.err));
    }

    private static Writer terminal(FileDescriptor to) {
        Writer utf8 =
                new OutputStreamWriter(
                        new java.io.BufferedOutputStream(new FileOutputStream(to)),
                        StandardCharsets.UTF_8);
        Console console = System.console();
        // A pipe or a file gets UTF-8 in every locale, for scripts lean on the headers.
        return console == null || PlainSigns.shownIn(console.charset())
                ? utf8
                : new PlainSigns(utf8);
    }

    /**
     * Why not all of it could be written, e.g. "No space left on device"; empty too where the
     * reader went away, which is its good right.
     */
    Optional<String> trouble() {
        return Optional.ofNullable(failure)
                .map(IOException::getMessage)
                .filter(m -> !m.contains("roken pipe"));
    }

    @Override
    public void write(int c) throws IOException {
        write(new char[] {(char) c}, 0, 1);
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        try {
            out.write(text, from, length);
        } catch (IOException e) {
            throw kept(e);
        }
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.toCharArray(), from, length);
    }

    @Override
    public void flush() throws IOException {
        try {
            out.flush();
        } catch (IOException e) {
            throw kept(e);
        }
    }

    private IOException kept(IOException e) {
        if (failure == null) {
            failure = e;
        }
        return e;
    }
}
