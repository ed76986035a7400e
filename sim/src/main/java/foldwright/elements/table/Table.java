// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A CSV table (RFC 4180 quoting, one record a line, UTF-8) whose first line names the columns.
 *
 * <p>Column names end with the unit they are written in; callers ask for a number with the factor
 * that turns it into SI, so a table keeps the digits of its source.
 */
public final class Table {
    /** Factor from millimetres to metres, and for every other "milli". */
    public static final double MILLI = 1e-3;

    /** Factor from kilonewtons to newtons. */
    public static final double KILO = 1e3;

    /** Factor from megapascals to pascals. */
    public static final double MEGA = 1e6;

    /** Factor from gigapascals to pascals. */
    public static final double GIGA = 1e9;

    /** A factor for columns already in SI units or without a unit. */
    public static final double ONE = 1;

    private final String name;
    private final Map<String, Integer> columns;
    private final List<Row> rows;

    private Table(String name, Map<String, Integer> columns, List<List<String>> cells) {
        this.name = name;
        this.columns = columns;
        List<Row> made = new ArrayList<>(cells.size());
        for (int i = 0; i < cells.size(); i++) {
            made.add(new Row(cells.get(i), i + 2));
        }
        this.rows = List.copyOf(made);
    }

    /**
     * Reads a table shipped with the program.
     *
     * @param file name of a file in this package's resources, e.g. {@code "materials.csv"}
     * @throws TableException if there is no such table or it is malformed
     */
    public static Table shipped(String file) {
        try (InputStream in = Table.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new TableException(file, 0, "", file, "a table shipped with the program");
            }
            return read(file, new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + file, e);
        }
    }

    /**
     * Reads a table from any text; the reader is not closed.
     *
     * @param name what errors call the table
     * @throws TableException if it is empty, names a column twice, or a line has the wrong number
     *     of cells
     */
    public static Table read(String name, Reader text) throws IOException {
        BufferedReader lines = new BufferedReader(text);
        String header = lines.readLine();
        if (header == null) {
            throw new TableException(name, 1, "", "nothing", "a header line with column names");
        }
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (String column : split(name, 1, header)) {
            if (columns.put(column, columns.size()) != null) {
                throw new TableException(name, 1, column, "the name twice", "each name once");
            }
        }
        List<List<String>> cells = new ArrayList<>();
        int number = 1;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            List<String> row = split(name, number, line);
            if (row.size() != columns.size()) {
                throw new TableException(
                        name, number, "", row.size() + " cells", columns.size() + " cells");
            }
            cells.add(row);
        }
        return new Table(name, columns, cells);
    }

    private static List<String> split(String name, int number, String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                boolean escaped = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (escaped) {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        if (quoted) {
            throw new TableException(name, number, "", "an open quote", "quotes in pairs");
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /** File name of the table. */
    public String name() {
        return name;
    }

    /** Column names from left to right. */
    public List<String> columns() {
        return List.copyOf(columns.keySet());
    }

    /** The records from top to bottom. */
    public List<Row> rows() {
        return rows;
    }

    /** One record of the table. */
    public final class Row {
        private final List<String> cells;
        private final int line;

        private Row(List<String> cells, int line) {
            this.cells = List.copyOf(cells);
            this.line = line;
        }

        /** Line of the record in the file. */
        public int line() {
            return line;
        }

        /** The cell as written, without surrounding blanks. */
        public String text(String column) {
            Integer at = columns.get(column);
            if (at == null) {
                throw new TableException(
                        name, line, column, column, "one of " + String.join(", ", columns()));
            }
            return cells.get(at);
        }

        /**
         * The cell as a finite number in SI units.
         *
         * @param toSi factor from the unit of the column to SI
         */
        public double number(String column, double toSi) {
            String text = text(column);
            double value;
            try {
                value = Double.parseDouble(text);
            } catch (NumberFormatException e) {
                throw new TableException(name, line, column, text, "a number");
            }
            if (!Double.isFinite(value)) {
                throw new TableException(name, line, column, text, "a finite number");
            }
            return value * toSi;
        }

        /** The cell as a number in SI units, or empty if the cell is. */
        public OptionalDouble optional(String column, double toSi) {
            return text(column).isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(number(column, toSi));
        }

        /** The cell as a whole number. */
        public int whole(String column) {
            String text = text(column);
            try {
                return Integer.parseInt(text);
            } catch (NumberFormatException e) {
                throw new TableException(name, line, column, text, "a whole number");
            }
        }
    }
}
