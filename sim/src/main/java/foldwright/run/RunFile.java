// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import foldwright.machine.file.WholeFile;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Runs as files: JSON, one row a line, the unit of each column in its name, the machine's text
 * inside. Such a file needs nothing beside it.
 */
public final class RunFile {
    /** The first key of every run file; its value is the version of the form. */
    static final String FIRST_KEY = "foldwrightRun";

    static final int VERSION = 1;

    /** Begins the name of a column with the tension of a section of belt. */
    static final String TENSION = "tension ";

    private static final MathContext DIGITS = new MathContext(9);
    private static final Pattern BEGIN =
            Pattern.compile("\\A\uFEFF?\\s*\\{\\s*\"" + FIRST_KEY + "\".*", Pattern.DOTALL);

    private RunFile() {}

    /** Whether a file begins as a run file does; false where it cannot be read. */
    public static boolean isRun(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            String head = new String(in.readNBytes(200), StandardCharsets.UTF_8);
            return BEGIN.matcher(head).matches();
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Reads a run.
     *
     * @throws BadRunFile where it cannot be used
     */
    public static Run read(Path file) throws BadRunFile {
        return RunReader.read(file);
    }

    /**
     * Writes a run, complete or not at all.
     *
     * @throws IOException if it cannot be written; then nothing has changed
     */
    public static void write(Path file, Run run) throws IOException {
        WholeFile.write(file, text(run));
    }

    /** The text of a run's file. */
    public static String text(Run run) {
        StringBuilder out = new StringBuilder(1 << 16);
        out.append("{\n  \"").append(FIRST_KEY).append("\": ").append(VERSION);
        field(out, "kind", run.kind().word());
        field(out, "subject", run.subject());
        field(out, "outcome", run.outcome());
        field(out, "step", number(run.step() * 1e3) + " ms");
        events(out, run);
        field(out, "machineFile", run.machine().name());
        field(out, "machine", run.machine().text());
        table(out, run.table());
        return out.append("\n}\n").toString();
    }

    private static void field(StringBuilder out, String key, String value) {
        out.append(",\n  \"").append(key).append("\": ");
        quoted(out, value);
    }

    private static void quoted(StringBuilder out, String text) {
        out.append('"');
        JsonStringEncoder.getInstance().quoteAsString(text, out);
        out.append('"');
    }

    private static void events(StringBuilder out, Run run) {
        out.append(",\n  \"events\": [");
        String between = "\n    ";
        for (RunEvent e : run.events()) {
            out.append(between).append("{ \"kind\": \"").append(e.kind().word());
            out.append("\", \"time\": \"").append(number(e.time())).append(" s\"");
            if (e.line() > 0) {
                out.append(", \"line\": ").append(e.line());
            }
            out.append(", \"sentence\": ");
            quoted(out, e.sentence());
            out.append(" }");
            between = ",\n    ";
        }
        out.append("\n  ]");
    }

    private static void table(StringBuilder out, RunTable table) {
        out.append(",\n  \"columns\": [");
        String between = "";
        for (RunColumn column : table.columns()) {
            out.append(between).append('"').append(header(column)).append('"');
            between = ", ";
        }
        for (String section : table.sections()) {
            out.append(between);
            quoted(out, TENSION + section + " [N]");
        }
        out.append("],\n  \"rows\": [");
        for (int r = 0; r < table.rows(); r++) {
            out.append(r == 0 ? "\n[" : ",\n[");
            for (int c = 0; c < table.columns().size(); c++) {
                RunColumn column = table.columns().get(c);
                out.append(c == 0 ? "" : ",");
                out.append(number(column.unit().fromSi(table.at(column, r))));
            }
            for (int i = 0; i < table.sections().size(); i++) {
                out.append(',').append(number(table.tension(i, r)));
            }
            out.append(']');
        }
        out.append("\n  ]");
    }

    /** Name and unit of a column, as it stands in the file. */
    static String header(RunColumn column) {
        return column.title() + " [" + column.unit().text() + "]";
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "null";
        }
        return value == 0
                ? "0"
                : new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
