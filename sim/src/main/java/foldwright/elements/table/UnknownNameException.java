// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.table;

import java.util.List;
import java.util.Locale;

/** A name that no table entry carries; it holds the entries written most alike. */
public final class UnknownNameException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String kind;
    private final String asked;
    private final transient List<String> nearest;

    UnknownNameException(String kind, String asked, List<String> nearest) {
        super(
                String.format(
                        Locale.ROOT,
                        "no %s is called \"%s\"; nearest: %s",
                        kind,
                        asked,
                        String.join(", ", nearest)));
        this.kind = kind;
        this.asked = asked;
        this.nearest = List.copyOf(nearest);
    }

    /** What was looked for, e.g. "trapezoidal thread". */
    public String kind() {
        return kind;
    }

    /** The name as asked. */
    public String asked() {
        return asked;
    }

    /** Names written most alike, the nearest first. */
    public List<String> nearest() {
        return nearest == null ? List.of() : nearest;
    }
}
