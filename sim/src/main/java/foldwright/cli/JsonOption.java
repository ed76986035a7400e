// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** The option {@code --json}, and the writing of what it asks for. */
final class JsonOption {
    @Option(
            names = "--json",
            description = "Print the result as JSON on standard output, and nothing else there.")
    private boolean wanted;

    /** Writes one JSON value. */
    interface Body {
        void write(JsonGenerator out) throws IOException;
    }

    boolean wanted() {
        return wanted;
    }

    /** Prints a value with a line feed at its end. */
    void print(CommandSpec spec, Body body) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text(body));
        out.flush();
    }

    /** A value as indented JSON text. */
    static String text(Body body) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter()
                            .withObjectIndenter(
                                    new com.fasterxml.jackson.core.util.DefaultIndenter(
                                            "  ", "\n")));
            body.write(json);
        }
        return text.append('\n').toString();
    }
}
