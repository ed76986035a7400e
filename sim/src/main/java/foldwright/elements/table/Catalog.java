// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * Table entries by name. A name is compared after a normalisation that the part chooses, so "Tr
 * 10×2" and "tr10x2" are one thread.
 *
 * @param <T> the record of one entry
 */
public final class Catalog<T> {
    private static final int SUGGESTIONS = 3;
    private static final Pattern DROPPED = Pattern.compile("[^\\p{L}\\p{N}.+]");

    private final String kind;
    private final UnaryOperator<String> normalise;
    private final Function<T, String> nameOf;
    private final Map<String, T> entries = new LinkedHashMap<>();

    private Catalog(String kind, Function<T, String> nameOf, UnaryOperator<String> normalise) {
        this.kind = kind;
        this.nameOf = nameOf;
        this.normalise = normalise;
    }

    /**
     * A catalog of the given entries.
     *
     * @param kind what an entry is called in messages, e.g. "trapezoidal thread"
     * @param entries in the order of the table
     * @param nameOf name of an entry as printed
     * @param normalise brings equal names to one spelling
     * @throws IllegalArgumentException if two entries carry one name
     */
    public static <T> Catalog<T> of(
            String kind,
            List<T> entries,
            Function<T, String> nameOf,
            UnaryOperator<String> normalise) {
        Catalog<T> catalog = new Catalog<>(kind, nameOf, normalise);
        for (T entry : entries) {
            String name = nameOf.apply(entry);
            if (catalog.entries.put(normalise.apply(name), entry) != null) {
                throw new IllegalArgumentException("two " + kind + " entries called " + name);
            }
        }
        return catalog;
    }

    /** Lower case, blanks and punctuation other than point and plus dropped: the plain rule. */
    public static String plain(String name) {
        return DROPPED.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
    }

    /** The entry of that name, or empty. */
    public Optional<T> find(String name) {
        return Optional.ofNullable(entries.get(normalise.apply(name)));
    }

    /**
     * The entry of that name.
     *
     * @throws UnknownNameException with the nearest names if there is none
     */
    public T get(String name) {
        return find(name)
                .orElseThrow(
                        () -> new UnknownNameException(kind, name, nearest(name, SUGGESTIONS)));
    }

    /** All entries in the order of the table. */
    public List<T> all() {
        return List.copyOf(entries.values());
    }

    /** All names in the order of the table. */
    public List<String> names() {
        return entries.values().stream().map(nameOf).toList();
    }

    /** At most {@code count} names written most like the asked one, the nearest first. */
    public List<String> nearest(String asked, int count) {
        String target = normalise.apply(asked);
        List<Map.Entry<String, T>> ranked = new ArrayList<>(entries.entrySet());
        ranked.sort(
                Comparator.comparingDouble(
                        entry -> SpellingDistance.between(target, entry.getKey())));
        return ranked.stream().limit(count).map(entry -> nameOf.apply(entry.getValue())).toList();
    }
}
