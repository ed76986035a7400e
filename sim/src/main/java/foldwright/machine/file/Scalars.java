// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.NameTable;
import foldwright.machine.keys.Range;
import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import foldwright.quantity.Unit;
import foldwright.quantity.Units;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
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
        String text = null;
        if (node instanceof Node.Text quoted) {
            text = quoted.text();
        } else if (node instanceof Node.Digits digits) {
            text = digits.digits();
        }
        ProblemCode code = ProblemCode.WRONG_TYPE;
        String found = "";
        Optional<String> nearest = Optional.empty();
        try {
            if (text != null) {
                double value = Quantity.read(text, dimension);
                if (range.holds(value)) {
                    return Optional.of(value);
                }
                code = ProblemCode.OUT_OF_RANGE;
            }
        } catch (NotAQuantity e) {
            code = code(e.reason());
            found = ", which " + why(e);
            nearest = QuantityPattern.nearestUnit(e.unit(), dimension);
        }
        String allowed = allowed(dimension, range, eg);
        boolean unit = code == ProblemCode.UNKNOWN_UNIT;
        problems.add(
                code,
                node.start(),
                path,
                found(node) + found,
                allowed,
                unit ? nearest : Optional.empty());
        return Optional.empty();
    }

    /** What a text is instead, to be put after "which". */
    static String why(NotAQuantity e) {
        if (e.reason() == NotAQuantity.Reason.UNKNOWN_UNIT) {
            return e.reason().words() + ", " + Words.quoted(e.unit());
        } else if (e.reason() != NotAQuantity.Reason.WRONG_DIMENSION) {
            return e.reason().words();
        }
        Unit unit = Units.of(e.unit());
        return Arrays.stream(Dimension.values())
                .filter(unit::measures)
                .findFirst()
                .map(dimension -> "is " + article(dimension.words()))
                .orElse(e.reason().words() + ", " + Words.quoted(e.unit()));
    }

    /** A noun with its indefinite article. */
    static String article(String noun) {
        boolean bare = noun.startsWith("a ");
        return bare ? noun : ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }

    static ProblemCode code(NotAQuantity.Reason reason) {
        return switch (reason) {
            case NO_NUMBER -> ProblemCode.NO_NUMBER;
            case DECIMAL_COMMA -> ProblemCode.DECIMAL_COMMA;
            case TOO_LARGE -> ProblemCode.OUT_OF_RANGE;
            case NO_UNIT -> ProblemCode.NO_UNIT;
            case UNKNOWN_UNIT -> ProblemCode.UNKNOWN_UNIT;
            case WRONG_DIMENSION -> ProblemCode.WRONG_DIMENSION;
        };
    }

    static String allowed(Dimension dimension, Range range, String example) {
        String what = article(dimension.words());
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
        ProblemCode code = ProblemCode.WRONG_TYPE;
        if (node instanceof Node.Digits digits && isWhole(digits.digits())) {
            double value = Double.parseDouble(digits.digits());
            if (key.range().holds(value)) {
                return Optional.of((int) value);
            }
            code = ProblemCode.OUT_OF_RANGE;
        }
        String allowed = "a whole number, " + key.range().words();
        problems.add(code, node.start(), path, found(node), allowed);
        return Optional.empty();
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
            NameTables.Names names = NameTables.names(key.names());
            problems.addUnknownName(node.start(), path, text.text(), names);
        }
        return name;
    }

    /** One of the words of an enum. */
    Optional<Object> word(Node node, String path, Class<?> type) {
        List<String> words = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            words.add(Keys.word((Enum<?>) constant));
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
