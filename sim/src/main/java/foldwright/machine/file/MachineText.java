// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import foldwright.machine.MachineNumbers;
import foldwright.machine.keys.KeyOf;
import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import foldwright.quantity.Unit;
import foldwright.quantity.Units;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;

/**
 * The text of a machine file in which single values are replaced; comments, order and layout stay.
 *
 * <p>Immutable: every change gives a new text. A changed text is not judged before {@link #read}.
 */
public final class MachineText {
    private static final int DIGITS = 12;

    private final String name;
    private final String text;

    private MachineText(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /** The text of a file that was read. */
    public static MachineText of(MachineFile file) {
        return new MachineText(file.name(), file.text());
    }

    /** The text as it stands now. */
    public String text() {
        return text;
    }

    /**
     * Reads the changed text.
     *
     * @throws BadMachineFile with all problems of the text
     */
    public MachineFile read() throws BadMachineFile {
        return MachineFile.read(name, text);
    }

    /**
     * Writes the text to a file, complete or not at all.
     *
     * @throws BadMachineFile if the text is no good machine; then nothing is written
     * @throws IOException if it cannot be written; then nothing has changed
     */
    public void save(Path file) throws BadMachineFile, IOException {
        read();
        WholeFile.write(file, text);
    }

    /**
     * Replaces a number; it is written in the unit that stands in the file, or in the usual one
     * where the key is not there yet.
     *
     * @param path key path, e.g. {@code springs[0].law.rate}
     * @param si the number [SI]
     * @throws IllegalArgumentException if no number belongs there
     */
    public MachineText with(String path, double si) {
        Node root = root();
        Node node = KeyPath.find(root, path).orElse(null);
        if (node instanceof Node.Text quoted) {
            return replaced(node, '"' + inUnitOf(quoted.text(), path, si) + '"');
        } else if (node instanceof Node.Digits) {
            return replaced(node, plain(BigDecimal.valueOf(si)));
        } else if (node == null && path.matches(".+\\.(motor|screw)")) {
            return withTeeth(root, path, si);
        } else if (node == null) {
            KeyOf key = key(path, si);
            boolean bare = key.dimension() == Dimension.RATIO;
            Unit unit = Units.of(key.dimension().usualUnit());
            BigDecimal value = BigDecimal.valueOf(unit.fromSi(si));
            String number = plain(value);
            return withJson(path, bare ? number : '"' + number + ' ' + unit.text() + '"');
        }
        throw new IllegalArgumentException(path + ": no number stands there");
    }

    /** Replaces one of the tooth numbers of a ratio such as {@code 16:48}. */
    private MachineText withTeeth(Node root, String path, double si) {
        int dot = path.lastIndexOf('.');
        Node ratio = KeyPath.find(root, path.substring(0, dot)).orElse(null);
        boolean written = ratio instanceof Node.Text text && text.text().contains(":");
        if (!written || si != Math.rint(si)) {
            throw new IllegalArgumentException(path + ": no number stands there");
        }
        String[] teeth = ((Node.Text) ratio).text().split(":", 2);
        int changed = path.endsWith(".motor") ? 0 : 1;
        teeth[changed] = plain(BigDecimal.valueOf(si));
        return replaced(ratio, quoted(teeth[0].strip() + ":" + teeth[1].strip()));
    }

    /**
     * Replaces a text, such as a word, a name or {@code 16:48}, or adds it.
     *
     * @param path key path
     * @param value the text without quotes
     */
    public MachineText with(String path, String value) {
        return withJson(path, quoted(value));
    }

    /** Replaces a value by a JSON text, or adds it. */
    MachineText withJson(String path, String json) {
        Node root = root();
        return KeyPath.find(root, path)
                .map(node -> replaced(node, json))
                .orElseGet(() -> inserted(root, KeyPath.steps(path), json));
    }

    private MachineText replaced(Node node, String json) {
        String changed = text.substring(0, node.start()) + json + text.substring(node.end());
        return new MachineText(name, changed);
    }

    /** Adds a key behind the last one of the innermost object that is there. */
    private MachineText inserted(Node root, List<String> steps, String json) {
        for (int depth = steps.size() - 1; depth >= 0; depth--) {
            String parent = String.join(".", steps.subList(0, depth));
            Node node = depth == 0 ? root : KeyPath.find(root, parent).orElse(null);
            boolean list = steps.get(depth).startsWith("[");
            if (node instanceof Node.Members members && !list) {
                if (members.get(steps.get(depth)).isPresent()) {
                    break;
                }
                String value = json;
                for (int i = steps.size() - 1; i > depth; i--) {
                    value = "{ " + quoted(steps.get(i)) + ": " + value + " }";
                }
                return insertedInto(members, steps.get(depth), value);
            } else if (node != null || list) {
                break;
            }
        }
        throw new IllegalArgumentException(String.join(".", steps) + ": no place for this key");
    }

    private MachineText insertedInto(Node.Members object, String key, String json) {
        String entry = quoted(key) + ": " + json;
        if (object.members().isEmpty()) {
            String inside = "{ " + entry + " }";
            return replaced(object, inside);
        }
        Node.Member last = object.members().get(object.members().size() - 1);
        int end = last.value().end();
        int lineEnd = endOfLine(end);
        boolean oneLine = lineEnd >= object.end();
        if (oneLine) {
            return new MachineText(
                    name, text.substring(0, end) + ", " + entry + text.substring(end));
        }
        // the comment behind the last value stays with it
        String rest = text.substring(end, lineEnd);
        String behind = rest.startsWith("  ") ? rest.substring(1) : rest;
        String indent = "\n" + indentOf(last.start());
        return new MachineText(
                name,
                text.substring(0, end) + "," + behind + indent + entry + text.substring(lineEnd));
    }

    private int endOfLine(int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        return at;
    }

    private String indentOf(int at) {
        int start = text.lastIndexOf('\n', at - 1) + 1;
        int end = start;
        while (end < at && Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return text.substring(start, end);
    }

    private String inUnitOf(String written, String path, double si) {
        try {
            Quantity quantity = Quantity.read(written);
            double value = quantity.unit().fromSi(si);
            String unit = unitPart(written);
            return plain(BigDecimal.valueOf(value)) + unit;
        } catch (NotAQuantity e) {
            throw new IllegalArgumentException(path + ": no number stands there", e);
        }
    }

    /** What stands behind the number: the unit with the space before it. */
    private static String unitPart(String written) {
        int at = 0;
        while (at < written.length() && "+-\u2212.0123456789 ".indexOf(written.charAt(at)) >= 0) {
            at++;
        }
        boolean exponent =
                at + 1 < written.length()
                        && (written.charAt(at) == 'e' || written.charAt(at) == 'E')
                        && "+-0123456789".indexOf(written.charAt(at + 1)) >= 0;
        if (exponent) {
            return unitPart(written.substring(at + 1));
        }
        int start = at;
        while (start > 0 && written.charAt(start - 1) == ' ') {
            start--;
        }
        return written.substring(start);
    }

    private static String plain(BigDecimal value) {
        BigDecimal rounded = value.round(new MathContext(DIGITS)).stripTrailingZeros();
        return rounded.toPlainString();
    }

    private static String quoted(String value) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : value.toCharArray()) {
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }

    private KeyOf key(String path, double si) {
        try {
            Machine with = MachineNumbers.with(read().machine(), path, si);
            return MachineNumbers.all(with).stream()
                    .filter(entry -> entry.path().equals(path))
                    .map(MachineNumbers.Entry::key)
                    .findFirst()
                    .orElseThrow();
        } catch (BadMachineFile e) {
            throw new IllegalArgumentException(path + ": the text is no good machine now", e);
        }
    }

    private Node root() {
        SourceText source = new SourceText(name, text);
        return TreeReader.read(source, new Problems(source))
                .orElseThrow(() -> new IllegalStateException("a text that was read is JSON"));
    }
}
