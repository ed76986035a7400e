// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.NearestWord;
import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import foldwright.quantity.Unit;
import foldwright.quantity.Units;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads run files in one pass; the first thing that is wrong is told with its place. */
final class RunReader {
    private static final List<String> KEYS =
            List.of(
                    RunFile.FIRST_KEY,
                    "kind",
                    "subject",
                    "outcome",
                    "step",
                    "events",
                    "machineFile",
                    "machine",
                    "columns",
                    "rows");
    private static final List<String> EVENT_KEYS = List.of("kind", "time", "line", "sentence");
    private static final int MOST_ROWS = 2_000_000;

    private final String name;
    private final JsonParser in;
    private final Map<String, String> words = new HashMap<>();
    private final List<RunColumn> columns = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();
    private final List<String> sections = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private final List<RunEvent> events = new ArrayList<>();
    private double step;

    private RunReader(String name, JsonParser in) {
        this.name = name;
        this.in = in;
    }

    static Run read(Path file) throws BadRunFile {
        String name = file.toString();
        try (InputStream bytes = Files.newInputStream(file);
                JsonParser in = new JsonFactory().createParser(bytes)) {
            return new RunReader(name, in).run();
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String place = at == null ? "" : ":" + at.getLineNr() + ":" + at.getColumnNr();
            throw new BadRunFile(
                    name
                            + place
                            + ": "
                            + (e instanceof JsonEOFException
                                    ? "the file ends in the middle of it; is it cut short?"
                                    : "found what is no JSON (or is the file cut short?): "
                                            + firstLine(e.getOriginalMessage())));
        } catch (NoSuchFileException e) {
            throw new BadRunFile(name + ": no such file");
        } catch (IOException e) {
            throw new BadRunFile(name + ": cannot be read: " + e.getMessage());
        }
    }

    private static String firstLine(String text) {
        return String.valueOf(text).lines().findFirst().orElse("");
    }

    private BadRunFile bad(String path, String found, String allowed) {
        JsonLocation at = in.currentTokenLocation();
        return new BadRunFile(
                name
                        + ":"
                        + at.getLineNr()
                        + ":"
                        + at.getColumnNr()
                        + ": "
                        + path
                        + ": "
                        + found
                        + "; allowed: "
                        + allowed);
    }

    private Run run() throws IOException, BadRunFile {
        if (in.nextToken() != JsonToken.START_OBJECT) {
            throw bad("(file)", "found " + token(), "an object");
        }
        while (in.nextToken() == JsonToken.FIELD_NAME) {
            String key = in.currentName();
            if (!KEYS.contains(key)) {
                throw bad(key, "unknown key" + nearest(key, KEYS), String.join(", ", KEYS));
            }
            in.nextToken();
            value(key);
        }
        if (in.nextToken() != null) {
            throw bad("(file)", "found text behind the end", "one object");
        }
        return whole();
    }

    private static String nearest(String word, List<String> known) {
        return NearestWord.of(word, known).map(n -> ", nearest " + n).orElse("");
    }

    private void value(String key) throws IOException, BadRunFile {
        switch (key) {
            case RunFile.FIRST_KEY -> {
                if (in.currentToken() != JsonToken.VALUE_NUMBER_INT
                        || in.getIntValue() != RunFile.VERSION) {
                    throw bad(key, "found " + token(), Integer.toString(RunFile.VERSION));
                }
                words.put(key, "");
            }
            case "step" -> {
                step = quantity(key, Dimension.TIME);
                words.put(key, "");
            }
            case "events" -> events();
            case "columns" -> columns();
            case "rows" -> rows();
            default -> words.put(key, text(key));
        }
    }

    private String text(String path) throws IOException, BadRunFile {
        if (in.currentToken() != JsonToken.VALUE_STRING) {
            throw bad(path, "found " + token(), "a text");
        }
        return in.getText();
    }

    private double quantity(String path, Dimension dimension) throws IOException, BadRunFile {
        String text = text(path);
        try {
            return Quantity.read(text, dimension);
        } catch (NotAQuantity e) {
            throw bad(
                    path,
                    "found \"" + text + "\"",
                    "a "
                            + dimension.words()
                            + " with its unit, such as \"5 "
                            + dimension.usualUnit()
                            + "\"");
        }
    }

    private String token() throws IOException {
        String text = in.getText();
        return text == null ? "the end" : text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    private void array(String path) throws IOException, BadRunFile {
        if (in.currentToken() != JsonToken.START_ARRAY) {
            throw bad(path, "found " + token(), "a list");
        }
    }

    // ---- columns and rows

    private void columns() throws IOException, BadRunFile {
        array("columns");
        while (in.nextToken() != JsonToken.END_ARRAY) {
            String path = "columns[" + units.size() + "]";
            String text = text(path);
            int open = text.lastIndexOf(" [");
            String title = open < 0 ? text : text.substring(0, open);
            Optional<RunColumn> column =
                    Arrays.stream(RunColumn.values())
                            .filter(c -> c.title().equals(title))
                            .findFirst();
            List<String> known = Arrays.stream(RunColumn.values()).map(RunColumn::title).toList();
            if (text.startsWith(RunFile.TENSION) && text.endsWith(" [N]")) {
                sections.add(text.substring(RunFile.TENSION.length(), text.length() - 4));
                units.add(Units.of("N"));
                continue;
            }
            if (!sections.isEmpty()) {
                throw bad(path, "found \"" + text + "\" behind a tension", "tensions last");
            }
            if (column.isEmpty()) {
                throw bad(
                        path,
                        "found \"" + text + "\"" + nearest(title, known),
                        String.join(", ", known) + ", each with its unit in brackets");
            }
            if (columns.contains(column.get())) {
                throw bad(path, "found \"" + text + "\" twice", "each column once");
            }
            String symbol =
                    open < 0 || !text.endsWith("]")
                            ? ""
                            : text.substring(open + 2, text.length() - 1);
            Optional<Unit> unit =
                    Units.find(symbol).filter(u -> u.measures(column.get().dimension()));
            if (unit.isEmpty()) {
                throw bad(
                        path,
                        "found \"" + text + "\"",
                        "a unit of "
                                + column.get().dimension().words()
                                + ", such as \""
                                + RunFile.header(column.get())
                                + "\"");
            }
            columns.add(column.get());
            units.add(unit.get());
        }
    }

    private void rows() throws IOException, BadRunFile {
        array("rows");
        if (columns.isEmpty()) {
            throw bad("rows", "found before columns", "columns first");
        }
        int time = columns.indexOf(RunColumn.TIME);
        while (in.nextToken() != JsonToken.END_ARRAY) {
            String path = "rows[" + rows.size() + "]";
            array(path);
            double[] row = new double[units.size()];
            int n = 0;
            while (in.nextToken() != JsonToken.END_ARRAY) {
                if (n == row.length) {
                    throw bad(path, "found more than " + n + " numbers", n + " as in columns");
                }
                row[n] = cell(path + "[" + n + "]", units.get(n));
                n++;
            }
            if (n < row.length) {
                throw bad(path, "found " + n + " numbers", row.length + " as in columns");
            }
            if (time >= 0 && !rows.isEmpty() && !(row[time] >= rows.get(rows.size() - 1)[time])) {
                throw bad(path, "found a time before that of the row above", "times in order");
            }
            if (rows.size() == MOST_ROWS) {
                throw bad(path, "found more rows", "at most " + MOST_ROWS);
            }
            rows.add(row);
        }
    }

    private double cell(String path, Unit unit) throws IOException, BadRunFile {
        if (in.currentToken() == JsonToken.VALUE_NULL) {
            return Double.NaN;
        }
        if (!in.currentToken().isNumeric()) {
            throw bad(path, "found " + token(), "a number in " + unit.text() + ", or null");
        }
        BigDecimal number = in.getDecimalValue();
        if (Math.abs(number.doubleValue()) > 1e15) {
            throw bad(path, "found " + token(), "a number of less than 1e15 in size");
        }
        return unit.toSi(number);
    }

    // ---- events

    private void events() throws IOException, BadRunFile {
        array("events");
        while (in.nextToken() != JsonToken.END_ARRAY) {
            String path = "events[" + events.size() + "]";
            if (in.currentToken() != JsonToken.START_OBJECT) {
                throw bad(path, "found " + token(), "an object");
            }
            event(path);
        }
    }

    private void event(String path) throws IOException, BadRunFile {
        RunEvent.Kind kind = null;
        double time = Double.NaN;
        long line = 0;
        String sentence = "";
        while (in.nextToken() == JsonToken.FIELD_NAME) {
            String key = in.currentName();
            String at = path + "." + key;
            in.nextToken();
            switch (key) {
                case "kind" -> kind = kind(at);
                case "time" -> time = quantity(at, Dimension.TIME);
                case "sentence" -> sentence = text(at);
                case "line" -> {
                    if (in.currentToken() != JsonToken.VALUE_NUMBER_INT || in.getLongValue() < 0) {
                        throw bad(at, "found " + token(), "a line number");
                    }
                    line = in.getLongValue();
                }
                default ->
                        throw bad(
                                at,
                                "unknown key" + nearest(key, EVENT_KEYS),
                                String.join(", ", EVENT_KEYS));
            }
        }
        if (kind == null || Double.isNaN(time)) {
            throw bad(path, "found no " + (kind == null ? "kind" : "time"), "kind and time");
        }
        events.add(new RunEvent(kind, time, line, sentence));
    }

    private RunEvent.Kind kind(String path) throws IOException, BadRunFile {
        String word = text(path);
        List<String> known =
                Arrays.stream(RunEvent.Kind.values()).map(RunEvent.Kind::word).toList();
        int at = known.indexOf(word);
        if (at < 0) {
            throw bad(
                    path,
                    "found \"" + word + "\"" + nearest(word, known),
                    String.join(", ", known));
        }
        return RunEvent.Kind.values()[at];
    }

    // ---- the whole

    private Run whole() throws BadRunFile {
        for (String key : KEYS) {
            boolean there =
                    switch (key) {
                        case "columns" -> !columns.isEmpty();
                        case "rows" -> !rows.isEmpty();
                        case "events" -> true;
                        default -> words.containsKey(key);
                    };
            if (!there) {
                throw bad(key, "found nothing", "a run file has this key and its content");
            }
        }
        List<String> kinds = Arrays.stream(RunKind.values()).map(RunKind::word).toList();
        int k = kinds.indexOf(words.get("kind"));
        if (k < 0) {
            throw bad("kind", "found \"" + words.get("kind") + "\"", String.join(", ", kinds));
        }
        RunKind kind = RunKind.values()[k];
        for (RunColumn column : kind.columns()) {
            if (!columns.contains(column)) {
                throw bad(
                        "columns",
                        "no column \"" + RunFile.header(column) + "\"",
                        "all columns of a run of the kind " + kind.word());
            }
        }
        if (!(step > 0)) {
            throw bad("step", "found " + step + " s", "a time above 0");
        }
        return new Run(
                kind,
                words.get("subject"),
                machine(),
                step,
                words.get("outcome"),
                new RunTable(columns, sections, rows),
                events);
    }

    private MachineFile machine() throws BadRunFile {
        try {
            return MachineFile.read(words.get("machineFile"), words.get("machine"));
        } catch (BadMachineFile e) {
            throw new BadRunFile(
                    name
                            + ": machine: the text of the machine inside cannot be used:\n"
                            + e.getMessage());
        }
    }
}
