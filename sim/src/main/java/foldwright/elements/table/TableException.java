// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.table;

import java.util.Locale;

/** A reference table is missing or one of its cells cannot be read; it names the place. */
public final class TableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String table;
    private final int line;
    private final String column;

    TableException(String table, int line, String column, String found, String allowed) {
        super(
                String.format(
                        Locale.ROOT,
                        "%s:%d, column \"%s\": found \"%s\", allowed: %s",
                        table,
                        line,
                        column,
                        found,
                        allowed));
        this.table = table;
        this.line = line;
        this.column = column;
    }

    /** File name of the table. */
    public String table() {
        return table;
    }

    /** Line in the file, the header being line 1; 0 if the file itself is at fault. */
    public int line() {
        return line;
    }

    /** Header of the column at fault, empty if the whole line is. */
    public String column() {
        return column;
    }
}
