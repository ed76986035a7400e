// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.Objects;
import java.util.Optional;

/**
 * One thing that is wrong with a machine file.
 *
 * @param code what kind of problem
 * @param place where
 * @param path key path of the value, empty for the file as a whole
 * @param found what stands there, in words
 * @param allowed what may stand there, in words; may be empty
 * @param nearest the nearest allowed key, word or name
 */
public record Problem(
        ProblemCode code,
        Place place,
        String path,
        String found,
        String allowed,
        Optional<String> nearest) {
    /** Checks that nothing is missing. */
    public Problem {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(allowed, "allowed");
        Objects.requireNonNull(nearest, "nearest");
    }

    /** One line: place, key path, found, allowed, nearest. */
    public String text() {
        StringBuilder out = new StringBuilder(place.toString()).append(": ");
        if (!path.isEmpty()) {
            out.append(path).append(": ");
        }
        out.append(found);
        if (!allowed.isEmpty()) {
            String word = code == ProblemCode.MISSING_KEY ? "; needed: " : "; allowed: ";
            out.append(word).append(allowed);
        }
        nearest.ifPresent(word -> out.append("; nearest: ").append(word));
        return out.toString();
    }
}
