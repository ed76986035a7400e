// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Locale;

/** Phrases of results made sentences. */
public final class Sentences {
    private Sentences() {}

    /** The phrase with a capital at its beginning and a full stop at its end. */
    public static String of(String phrase) {
        String text = phrase.strip();
        if (text.isEmpty()) {
            return text;
        }
        String whole = text.endsWith(".") ? text : text + ".";
        return whole.substring(0, 1).toUpperCase(Locale.ROOT) + whole.substring(1);
    }
}
