// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.Objects;

/**
 * A place in a file.
 *
 * @param file name of the file as it was given
 * @param line counted from 1; 0 where the whole file is meant
 * @param column in characters, counted from 1; 0 where the whole file is meant
 */
public record Place(String file, int line, int column) {
    /** Checks that the file is named. */
    public Place {
        Objects.requireNonNull(file, "file");
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
