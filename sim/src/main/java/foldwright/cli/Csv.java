// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as in RFC 4180, UTF-8, with a header that carries the units. */
final class Csv {
    private static final MathContext DIGITS = new MathContext(9);

    private final StringBuilder text = new StringBuilder();
    private final int columns;

    Csv(List<String> header) {
        columns = header.size();
        text.append(line(header));
    }

    /** One line with its end. */
    static String line(List<String> cells) {
        return cells.stream().map(Csv::quoted).collect(Collectors.joining(",", "", "\r\n"));
    }

    /** A row of as many cells as the header has. */
    void row(List<String> cells) {
        if (cells.size() != columns) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns);
        }
        text.append(line(cells));
    }

    /** A number with nine digits and without powers of ten; "inf" and "nan" where it is none. */
    static String number(double value) {
        if (Double.isNaN(value)) {
            return "nan";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "inf" : "-inf";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.toPlainString();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    String text() {
        return text.toString();
    }
}
