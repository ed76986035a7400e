// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.Collection;
import java.util.Optional;

/** The word a person most likely meant; one rule for keys of files and for the command line. */
public final class NearestWord {
    private NearestWord() {}

    /** The known word nearest to a text, if one is near enough to be meant. */
    public static Optional<String> of(String text, Collection<String> known) {
        return Words.nearest(text, known);
    }
}
