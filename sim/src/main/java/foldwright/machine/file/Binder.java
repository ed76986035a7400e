// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.Range;
import foldwright.machine.keys.RecordMaker;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Makes records from nodes by the keys described on their components, and reports every value that
 * does not fit. A record is only made once all its values are good.
 */
final class Binder {
    private static final ClassValue<Map<String, Class<?>>> KINDS =
            new ClassValue<>() {
                @Override
                protected Map<String, Class<?>> computeValue(Class<?> sealed) {
                    Map<String, Class<?>> kinds = new LinkedHashMap<>();
                    for (Class<?> permitted : sealed.getPermittedSubclasses()) {
                        if (permitted.isSealed()) {
                            kinds.putAll(get(permitted));
                        } else {
                            kinds.put(permitted.getAnnotation(Kind.class).word(), permitted);
                        }
                    }
                    return Collections.unmodifiableMap(kinds);
                }
            };

    private final Problems problems;
    private final Scalars scalars;
    private final TextForms textForms;

    Binder(Problems problems) {
        this.problems = problems;
        this.scalars = new Scalars(problems);
        this.textForms = new TextForms(problems, scalars);
    }

    /** A record of a type, or of one of the kinds of a sealed type. */
    <T> Optional<T> bind(Node node, String path, Class<T> type) {
        return value(node, path, type, null).map(type::cast);
    }

    private Optional<Object> value(Node node, String path, Class<?> type, KeyOf key) {
        if (type == double.class || type == Double.class) {
            Range range = key.isList() ? key.each() : key.range();
            String example = key.isList() ? "" : key.example();
            return scalars.number(node, path, key.dimension(), range, example)
                    .map(Object.class::cast);
        } else if (type == int.class) {
            return scalars.whole(node, path, key).map(Object.class::cast);
        } else if (type == String.class) {
            return scalars.text(node, path, key).map(Object.class::cast);
        } else if (type.isEnum()) {
            return scalars.word(node, path, type);
        } else if (TextForms.isShort(type)) {
            return textForms.read(node, path, type);
        } else if (TextForms.isNamed(type) && node instanceof Node.Text text) {
            return textForms.named(text, path, type);
        }
        return object(node, path, type);
    }

    private Optional<Object> object(Node node, String path, Class<?> type) {
        if (!(node instanceof Node.Members members)) {
            String allowed =
                    TextForms.isNamed(type) ? "a name of its table, or an object" : "an object";
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, Scalars.found(node), allowed);
            return Optional.empty();
        }
        if (!type.isSealed()) {
            return record(members, path, type, Optional.empty());
        }
        String choosing = type.getAnnotation(Kind.class).key();
        return kind(members, path, type, choosing)
                .flatMap(chosen -> record(members, path, chosen, Optional.of(choosing)));
    }

    /** The words that choose the kinds of a sealed type, with the kinds. */
    static Map<String, Class<?>> kinds(Class<?> sealed) {
        return KINDS.get(sealed);
    }

    private static List<String> names(Optional<String> choosing, List<KeyOf> keys) {
        List<String> names = new ArrayList<>(keys.size() + 1);
        choosing.ifPresent(names::add);
        for (KeyOf key : keys) {
            names.add(key.name());
        }
        return names;
    }

    private Optional<Class<?>> kind(
            Node.Members members, String path, Class<?> type, String choosing) {
        Map<String, Class<?>> kinds = kinds(type);
        String fallback = type.getAnnotation(Kind.class).orElse();
        Optional<Node> chosen = members.get(choosing);
        String here = join(path, choosing);
        if (chosen.isEmpty()) {
            if (fallback.isEmpty()) {
                String found = "the key is missing";
                String allowed = String.join(", ", kinds.keySet());
                problems.add(ProblemCode.MISSING_KEY, members.start(), here, found, allowed);
            }
            return Optional.ofNullable(kinds.get(fallback));
        }
        if (!(chosen.get() instanceof Node.Text text)) {
            String allowed = String.join(", ", kinds.keySet());
            int at = chosen.get().start();
            String found = Scalars.found(chosen.get());
            problems.add(ProblemCode.WRONG_TYPE, at, here, found, allowed);
            return Optional.empty();
        }
        if (!kinds.containsKey(text.text())) {
            problems.addUnknown(
                    ProblemCode.UNKNOWN_WORD, text.start(), here, text.text(), kinds.keySet());
        }
        return Optional.ofNullable(kinds.get(text.text()));
    }

    private Optional<Object> record(
            Node.Members members, String path, Class<?> type, Optional<String> choosing) {
        List<KeyOf> keys = Keys.of(type);
        List<String> names = names(choosing, keys);
        Set<String> misspelt = new HashSet<>();
        for (Node.Member member : members.members()) {
            boolean ignored = member.key().equals(type.getAnnotation(Kind.class).ignored());
            if (!ignored && !names.contains(member.key())) {
                String here = join(path, Words.shortened(member.key()));
                problems.addUnknown(
                        ProblemCode.UNKNOWN_KEY, member.start(), here, member.key(), names);
                Words.nearest(member.key(), names).ifPresent(misspelt::add);
            }
        }
        Object[] values = new Object[keys.size()];
        boolean complete = true;
        for (int i = 0; i < values.length; i++) {
            KeyOf key = keys.get(i);
            boolean missing = members.get(key.name()).isEmpty() && !key.mayBeAbsent();
            if (missing && !misspelt.contains(key.name())) {
                String here = join(path, key.name());
                String found = "the key is missing";
                problems.add(ProblemCode.MISSING_KEY, members.start(), here, found, needed(key));
            }
            values[i] = missing ? null : component(members, path, key);
            complete &= values[i] != null;
        }
        return complete ? construct(members, path, type, values) : Optional.empty();
    }

    /** The value of a component, or null where it is not good. */
    private Object component(Node.Members members, String path, KeyOf key) {
        String here = join(path, key.name());
        Optional<Node> given = members.get(key.name());
        Class<?> declared = key.component().getType();
        if (given.isEmpty() && key.orElse().isEmpty()) {
            return absent(declared);
        }
        Node node = given.orElseGet(() -> Defaults.node(key));
        Optional<Object> value =
                key.isList() ? list(node, here, key) : value(node, here, key.type(), key);
        if (value.isEmpty()) {
            return null;
        } else if (declared == OptionalDouble.class) {
            return OptionalDouble.of((Double) value.get());
        }
        return declared == Optional.class ? value : value.get();
    }

    /** What a missing key is for. */
    private static String needed(KeyOf key) {
        String about =
                key.about().substring(0, 1).toLowerCase(Locale.ROOT) + key.about().substring(1);
        boolean number = key.type() == double.class && !key.isList();
        String what =
                number
                        ? Scalars.allowed(key.dimension(), key.range(), key.example())
                        : key.isList() ? "a list" : "";
        return what.isEmpty() ? about : about + ": " + what;
    }

    private static Object absent(Class<?> declared) {
        if (declared == OptionalDouble.class) {
            return OptionalDouble.empty();
        }
        return declared == Optional.class ? Optional.empty() : List.of();
    }

    private Optional<Object> list(Node node, String path, KeyOf key) {
        if (!(node instanceof Node.Items list)) {
            String found = Scalars.found(node);
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, found, "a list");
            return Optional.empty();
        }
        int size = list.items().size();
        boolean rightSize = key.range().holds(size);
        if (!rightSize) {
            String found = "found " + size + (size == 1 ? " entry" : " entries");
            String allowed = key.range().words() + " entries";
            problems.add(ProblemCode.LIST_SIZE, node.start(), path, found, allowed);
        }
        Collection<Object> values = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            value(list.items().get(i), path + "[" + i + "]", key.type(), key)
                    .ifPresent(values::add);
        }
        return rightSize && values.size() == size ? Optional.of(values) : Optional.empty();
    }

    private Optional<Object> construct(
            Node.Members members, String path, Class<?> type, Object[] values) {
        try {
            return Optional.of(RecordMaker.make(type, values));
        } catch (IllegalArgumentException e) {
            String why = e.getMessage();
            String found = why.substring(why.indexOf(": ") + 2);
            problems.add(ProblemCode.CONTRADICTION, members.start(), path, found, "");
            return Optional.empty();
        }
    }

    private static String join(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
