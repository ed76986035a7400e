// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.machine.keys.Range;
import foldwright.quantity.Dimension;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The tables of all keys for the documentation, in Markdown, made from the keys themselves. */
public final class KeyTables {
    private final StringBuilder out = new StringBuilder();
    private final Set<Class<?>> seen = new LinkedHashSet<>();
    private final Deque<Class<?>> waiting = new ArrayDeque<>();

    private KeyTables() {}

    /** All tables, the machine first, then every part in the order in which it is met. */
    public static String markdown() {
        KeyTables tables = new KeyTables();
        tables.meet(Machine.class);
        while (!tables.waiting.isEmpty()) {
            tables.section(tables.waiting.poll());
        }
        return tables.out.toString();
    }

    private void meet(Class<?> type) {
        boolean described = type.isAnnotationPresent(Kind.class) && !TextForms.isShort(type);
        if (described && seen.add(type)) {
            waiting.add(type);
        }
    }

    private void section(Class<?> type) {
        Kind kind = type.getAnnotation(Kind.class);
        out.append("### ").append(title(type)).append("\n\n").append(kind.value()).append("\n\n");
        if (!type.isSealed()) {
            table(type);
            return;
        }
        Map<String, Class<?>> kinds = Binder.kinds(type);
        out.append("Chosen by `").append(kind.key()).append('`');
        out.append(kind.orElse().isEmpty() ? "" : ", by default `" + kind.orElse() + "`");
        out.append(":\n\n");
        kinds.forEach(
                (word, chosen) -> {
                    String about = chosen.getAnnotation(Kind.class).value();
                    out.append("**`\"").append(word).append("\"`** ").append(about).append("\n\n");
                    table(chosen);
                });
    }

    private void table(Class<?> type) {
        out.append("| key | value | left out | allowed | example | meaning |\n");
        out.append("| --- | --- | --- | --- | --- | --- |\n");
        for (KeyOf key : Keys.of(type)) {
            row(key);
        }
        out.append('\n');
    }

    private void row(KeyOf key) {
        meet(key.type());
        String example = key.example();
        boolean quoted =
                !example.isEmpty() && key.dimension() != Dimension.RATIO || isName(key, example);
        String shown = quoted && !example.startsWith("[") ? '"' + example + '"' : example;
        out.append("| `").append(key.name()).append("` | ").append(value(key)).append(" | ");
        out.append(absent(key)).append(" | ").append(allowed(key)).append(" | ");
        out.append(shown.isEmpty() ? "" : "`" + shown + "`").append(" | ");
        out.append(key.about()).append(" |\n");
    }

    private static boolean isName(KeyOf key, String example) {
        boolean number = key.type() == double.class || key.type() == int.class;
        return !example.isEmpty() && !number && !example.startsWith("[");
    }

    private String value(KeyOf key) {
        return key.isList() ? "list of " + single(key) : single(key);
    }

    private String single(KeyOf key) {
        Class<?> type = key.type();
        if (type == double.class || type == Double.class) {
            return key.dimension().words();
        } else if (type == int.class) {
            return "whole number";
        } else if (type == String.class) {
            return key.names() == NameTable.NONE ? "text" : "name";
        } else if (type.isEnum()) {
            return "word";
        } else if (TextForms.isShort(type)) {
            return "[" + title(type) + "](#short-forms)";
        }
        return "[" + title(type) + "](#" + anchor(type) + ")";
    }

    private static String absent(KeyOf key) {
        if (!key.mayBeAbsent()) {
            return "**required**";
        }
        return key.orElse().isEmpty() ? "–" : "`" + key.orElse() + "`";
    }

    private static String allowed(KeyOf key) {
        if (key.type().isEnum()) {
            StringBuilder words = new StringBuilder();
            for (Object constant : key.type().getEnumConstants()) {
                words.append(words.length() == 0 ? "" : ", ");
                words.append('`').append(Keys.word((Enum<?>) constant)).append('`');
            }
            return words.toString();
        } else if (key.names() != NameTable.NONE) {
            return String.join(", ", NameTables.names(key.names()).all());
        }
        String range = key.range().equals(Range.ALL) ? "" : key.range().words();
        return key.isList() && !range.isEmpty() ? range + " entries" : range;
    }

    /** A class name in words: {@code HelperSpring} is a helper spring. */
    private static String title(Class<?> type) {
        String spaced = type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ");
        return spaced.substring(0, 1) + spaced.substring(1).toLowerCase(Locale.ROOT);
    }

    private static String anchor(Class<?> type) {
        return title(type).toLowerCase(Locale.ROOT).replace(' ', '-');
    }
}
