// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Collects the problems of one file. */
final class Problems {
    private final SourceText source;
    private final List<Problem> list = new ArrayList<>();

    Problems(SourceText source) {
        this.source = source;
    }

    /** Adds a problem at an offset of the text. */
    void add(ProblemCode code, int offset, String path, String found, String allowed) {
        add(code, offset, path, found, allowed, Optional.empty());
    }

    /** Adds a problem with the nearest allowed text. */
    void add(
            ProblemCode code,
            int offset,
            String path,
            String found,
            String allowed,
            Optional<String> nearest) {
        Problem problem = new Problem(code, source.place(offset), path, found, allowed, nearest);
        if (!list.contains(problem)) {
            list.add(problem);
        }
    }

    /** Adds a problem with a word that is not among the known ones. */
    void addUnknown(
            ProblemCode code, int offset, String path, String wrong, Collection<String> known) {
        String found =
                switch (code) {
                    case UNKNOWN_KEY -> "no such key";
                    case UNKNOWN_PATH -> Words.quoted(wrong) + " leads nowhere in this file";

                    default -> "found " + Words.quoted(wrong);
                };
        String allowed = code == ProblemCode.UNKNOWN_PATH ? "" : String.join(", ", known);
        Optional<String> nearest = Words.nearest(wrong, known);
        list.add(new Problem(code, source.place(offset), path, found, allowed, nearest));
    }

    /** Adds a problem with a name that is in no table. */
    void addUnknownName(int offset, String path, String wrong, NameTables.Names names) {
        String found = Words.quoted(wrong) + " is not known";
        String allowed = names.all().stream().map(Words::quoted).collect(Collectors.joining(", "));
        Optional<String> nearest =
                names.nearest(wrong).stream().map(Words::quoted).reduce((a, b) -> a + ", " + b);
        list.add(
                new Problem(
                        ProblemCode.UNKNOWN_NAME,
                        source.place(offset),
                        path,
                        found,
                        allowed,
                        nearest));
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    /** All problems in order of place; of equal place in the order they were found. */
    List<Problem> inOrder() {
        List<Problem> sorted = new ArrayList<>(list);
        sorted.sort(
                Comparator.comparingInt((Problem p) -> p.place().line())
                        .thenComparingInt(p -> p.place().column()));
        return sorted;
    }
}
