// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.NameTable;
import foldwright.machine.keys.Range;
import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads single values: numbers with units, whole numbers, words and names. */
final class Scalars {
    private static final int LONGEST_NUMBER = 80;
    private static final int LONGEST_TEXT = 2000;

    private final Problems problems;

    Scalars(Problems problems) {
        this.problems = problems;
    }

    /** A number of a dimension within a range [SI]. */
    Optional<Double> number(Node node, String path, Dimension dimension, Range range, String eg) {
        String allowed = allowed(dimension, range, eg);
        String text;
        if (node instanceof Node.Text quoted) {
            text = quoted.text();
        } else if (node instanceof Node.Digits digits) {
            text = digits.digits();
        } else {
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        try {
            double value = Quantity.read(text, dimension);
            if (range.holds(value)) {
                return Optional.of(value);
            }
            problems.add(ProblemCode.OUT_OF_RANGE, node.start(), path, found(node), allowed);
        } catch (NotAQuantity e) {
            String wrong = e.unit().isEmpty() || e.unit().equals("1") ? "" : unit(e);
            String found = found(node) + ", which " + e.reason().words() + wrong;
            problems.add(code(e.reason()), node.start(), path, found, allowed);
        }
        return Optional.empty();
    }

    private static String unit(NotAQuantity e) {
        for (Dimension dimension : Dimension.values()) {
            if (e.reason() == NotAQuantity.Reason.WRONG_DIMENSION
                    && foldwright.quantity.Units.of(e.unit()).measures(dimension)) {
                return ", " + dimension.words();
            }
        }
        return ", " + Words.quoted(e.unit());
    }

    private static ProblemCode code(NotAQuantity.Reason reason) {
        return switch (reason) {
            case NO_NUMBER -> ProblemCode.NO_NUMBER;
            case DECIMAL_COMMA -> ProblemCode.DECIMAL_COMMA;
            case TOO_LARGE -> ProblemCode.OUT_OF_RANGE;
            case NO_UNIT -> ProblemCode.NO_UNIT;
            case UNKNOWN_UNIT -> ProblemCode.UNKNOWN_UNIT;
            case WRONG_DIMENSION -> ProblemCode.WRONG_DIMENSION;
        };
    }

    private static String allowed(Dimension dimension, Range range, String example) {
        String what = dimension == Dimension.RATIO ? dimension.words() : "a " + dimension.words();
        what = what.replace("a a", "an a");
        String limits = range.equals(Range.ALL) ? "" : ", " + range.words();
        return what
                + limits
                + (example.isEmpty() ? "" : ", such as " + example(dimension, example));
    }

    private static String example(Dimension dimension, String example) {
        return dimension == Dimension.RATIO ? example : Words.quoted(example);
    }

    /** A whole number within a range. */
    Optional<Integer> whole(Node node, String path, KeyOf key) {
        String allowed = "a whole number, " + key.range().words();
        if (!(node instanceof Node.Digits digits)) {
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        String text = digits.digits();
        boolean plain = text.length() <= 9 && text.matches("-?[0-9]+");
        if (!plain && !isWhole(text)) {
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        double value = plain ? Integer.parseInt(text) : Double.parseDouble(text);
        if (!key.range().holds(value)) {
            problems.add(ProblemCode.OUT_OF_RANGE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        return Optional.of((int) value);
    }

    private static boolean isWhole(String digits) {
        if (digits.length() > LONGEST_NUMBER) {
            return false;
        }
        double value = Double.parseDouble(digits);
        return Math.abs(value) < 1e15 && new BigDecimal(value).stripTrailingZeros().scale() <= 0;
    }

    /** A text that is not blank, and of a table if the key names one. */
    Optional<String> text(Node node, String path, KeyOf key) {
        if (!(node instanceof Node.Text text)) {
            String allowed = "a text in double quotes";
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        if (text.text().isBlank() || text.text().length() > LONGEST_TEXT) {
            String allowed = "a text of 1 to " + LONGEST_TEXT + " characters";
            problems.add(ProblemCode.OUT_OF_RANGE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        if (key.names() == NameTable.NONE) {
            return Optional.of(text.text());
        }
        Optional<String> name = NameTables.find(key.names(), text.text());
        if (name.isEmpty()) {
            problems.addUnknown(
                    ProblemCode.UNKNOWN_NAME,
                    node.start(),
                    path,
                    text.text(),
                    NameTables.names(key.names()));
        }
        return name;
    }

    /** One of the words of an enum. */
    Optional<Object> word(Node node, String path, Class<?> type) {
        List<String> words = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            words.add(Words.word((Enum<?>) constant));
        }
        if (!(node instanceof Node.Text text)) {
            String allowed = String.join(", ", words);
            problems.add(ProblemCode.WRONG_TYPE, node.start(), path, found(node), allowed);
            return Optional.empty();
        }
        int at = words.indexOf(text.text());
        if (at < 0) {
            problems.addUnknown(ProblemCode.UNKNOWN_WORD, node.start(), path, text.text(), words);
            return Optional.empty();
        }
        return Optional.of(type.getEnumConstants()[at]);
    }

    static String found(Node node) {
        return "found " + node.words();
    }
}
