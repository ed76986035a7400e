// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import foldwright.motion.ToolpathException.Fault;

/**
 * Splits a line into words by the rules of NISTIR 6556 (Kramer, Proctor, Messina, 2000) section
 * 3.3: letters in either case, blanks without meaning even inside numbers, comments in parentheses.
 * Common practice, no source: {@code ;} starts a comment up to the end of the line, {@code *nn} at
 * the end is the exclusive-or of all bytes before it.
 */
final class WordScanner {
    /** Powers of ten that a double holds exactly. */
    private static final double[] TEN = new double[19];

    static {
        double power = 1;
        for (int i = 0; i < TEN.length; i++) {
            TEN[i] = power;
            power *= 10;
        }
    }

    /** So many digits fit a long, whatever they are. */
    private static final int MOST_DIGITS = 17;

    private ByteLines lines;
    private byte[] b;
    private int to;
    private double number;

    /** Reads the present line of {@code source} into {@code words}, which is cleared first. */
    void scan(ByteLines source, Words words) throws ToolpathException {
        lines = source;
        b = source.bytes();
        to = source.to();
        words.clear();
        int i = skipMark(source.from());
        while (i < to) {
            int c = b[i];
            if (c == ' ' || c == '\t') {
                i++;
            } else if (c == ';') {
                return;
            } else if (c == '(') {
                i = skipComment(i);
            } else if (c == '*') {
                checkSum(i);
                return;
            } else if (c == '%' || c == '/') {
                i = sign(i, words);
            } else {
                i = word(i, words);
            }
        }
    }

    /** A byte-order mark before the first line is no part of it. */
    private int skipMark(int i) {
        boolean mark =
                lines.number() == 1
                        && to - i >= 3
                        && b[i] == (byte) 0xEF
                        && b[i + 1] == (byte) 0xBB
                        && b[i + 2] == (byte) 0xBF;
        return mark ? i + 3 : i;
    }

    private int skipComment(int open) throws ToolpathException {
        for (int i = open + 1; i < to; i++) {
            if (b[i] == ')') {
                return i + 1;
            }
            if (b[i] == '(') {
                throw lines.fault(
                        Fault.NESTED_COMMENT,
                        "a comment inside a comment",
                        "one pair of parentheses a comment");
            }
        }
        throw lines.fault(
                Fault.OPEN_COMMENT,
                "a comment that is not closed",
                "a closing parenthesis on the same line");
    }

    private int sign(int i, Words words) throws ToolpathException {
        if (!words.isEmpty() || words.percent()) {
            throw lines.fault(
                    Fault.BAD_CHARACTER,
                    "the sign " + (char) b[i] + " after other words",
                    "a lone % on its line, / only in front of a line");
        }
        if (b[i] == '%') {
            words.markPercent();
        }
        return i + 1;
    }

    private int word(int i, Words words) throws ToolpathException {
        int c = b[i];
        if (c >= 'a' && c <= 'z') {
            c -= 'a' - 'A';
        }
        if (c < 'A' || c > 'Z' || words.percent()) {
            throw notAWord(i);
        }
        if (c == 'O') {
            throw lines.fault(
                    Fault.OUTSIDE_SUBSET, "a subroutine word", "plain lines without subroutines");
        }
        int next = number(i + 1, (char) c);
        switch (c) {
            case 'N' -> checkNumberFirst(words);
            case 'G' -> addCode(words.addG(tenths()));
            case 'M' -> addCode(words.addM(tenths()));
            default -> {
                if (words.has((char) c)) {
                    throw lines.fault(
                            Fault.REPEATED_WORD,
                            "two " + (char) c + " words",
                            "each letter once a line");
                }
                words.put((char) c, number);
            }
        }
        return next;
    }

    private void checkNumberFirst(Words words) throws ToolpathException {
        if (!words.isEmpty()) {
            throw lines.fault(
                    Fault.REPEATED_WORD,
                    "an N word behind other words",
                    "the line number in front");
        }
    }

    private void addCode(boolean fits) throws ToolpathException {
        if (!fits) {
            throw lines.fault(
                    Fault.TOO_MANY_WORDS, "more than 12 G or M words", "at most 12 on a line");
        }
    }

    private int tenths() throws ToolpathException {
        double scaled = number * 10;
        if (scaled < 0 || scaled > 99999 || scaled != Math.rint(scaled)) {
            throw lines.fault(
                    Fault.BAD_NUMBER,
                    "a code number that no code has",
                    "codes such as G1, G91.1, M30");
        }
        return (int) scaled;
    }

    private ToolpathException notAWord(int i) {
        char c = (char) (b[i] & 0xFF);
        if (c == '#' || c == '[' || c == ']' || c == '=') {
            return lines.fault(
                    Fault.OUTSIDE_SUBSET, "a parameter or an expression", "plain numbers");
        }
        String name =
                c >= ' ' && c <= '~' ? "\"" + c + "\"" : String.format("byte 0x%02X", (int) c);
        return lines.fault(
                Fault.BAD_CHARACTER,
                name + " where a word should start",
                "a letter and its number");
    }

    /**
     * Reads a number, digits into a long and one division, and returns the place behind it. Plain
     * digits with a point are read here; blanks, too many digits and faults are left to {@link
     * #anyNumber}.
     */
    private int number(int from, char letter) throws ToolpathException {
        byte[] text = b;
        int last = to;
        int i = from;
        boolean negative = i < last && text[i] == '-';
        i += negative ? 1 : 0;
        int first = i;
        long digits = 0;
        int c = 0;
        while (i < last && (c = text[i]) >= '0' && c <= '9') {
            digits = digits * 10 + (c - '0');
            i++;
        }
        int count = i - first;
        int scale = 0;
        if (i < last && c == '.') {
            first = ++i;
            while (i < last && (c = text[i]) >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                i++;
            }
            scale = i - first;
            count += scale;
        }
        if (count == 0 || count > MOST_DIGITS || i < last && !endsNumber(text, i)) {
            return anyNumber(from, letter);
        }
        double size = scale > 0 ? digits / TEN[scale] : digits;
        number = negative ? -size : size;
        return i;
    }

    /** A letter ends a number, and so do blanks with nothing but a letter behind them. */
    private boolean endsNumber(byte[] text, int from) {
        int i = from;
        while (i < to && text[i] == ' ') {
            i++;
        }
        return i == to || text[i] >= 'A';
    }

    /** Reads a number with blanks inside or around it, or says what is wrong with it. */
    private int anyNumber(int from, char letter) throws ToolpathException {
        int i = from;
        while (i < to && (b[i] == ' ' || b[i] == '\t')) {
            i++;
        }
        boolean negative = i < to && b[i] == '-';
        if (negative || (i < to && b[i] == '+')) {
            i++;
        }
        long digits = 0;
        int count = 0;
        int scale = -1;
        for (; i < to; i++) {
            int c = b[i];
            if (c >= '0' && c <= '9') {
                if (digits < 100_000_000_000_000_000L) {
                    digits = digits * 10 + (c - '0');
                    count++;
                    scale = scale >= 0 ? scale + 1 : scale;
                } else if (scale < 0) {
                    throw lines.fault(
                            Fault.BAD_NUMBER,
                            "a number of over 17 digits behind " + letter,
                            "a plain number");
                }
            } else if (c == '.') {
                if (scale >= 0) {
                    throw lines.fault(
                            Fault.BAD_NUMBER,
                            "two points in the number behind " + letter,
                            "one point at most");
                }
                scale = 0;
            } else if (c != ' ' && c != '\t') {
                break;
            }
        }
        if (count == 0) {
            throw badNumber(i, letter);
        }
        double size = scale > 0 ? digits / TEN[scale] : digits;
        number = negative ? -size : size;
        return i;
    }

    private ToolpathException badNumber(int i, char letter) {
        if (i < to && (b[i] == '#' || b[i] == '[')) {
            return lines.fault(
                    Fault.OUTSIDE_SUBSET,
                    "a parameter or an expression behind " + letter,
                    "plain numbers");
        }
        return lines.fault(
                Fault.BAD_NUMBER, "no number behind " + letter, "digits with at most one point");
    }

    private void checkSum(int star) throws ToolpathException {
        int sum = 0;
        for (int i = lines.from(); i < star; i++) {
            sum ^= b[i];
        }
        sum &= 0xFF;
        int i = number(star + 1, '*');
        if (number != sum) {
            throw lines.fault(
                    Fault.CHECKSUM,
                    "checksum " + (long) number + ", the line's bytes give " + sum,
                    "a line that was not changed or cut");
        }
        while (i < to && (b[i] == ' ' || b[i] == '\t')) {
            i++;
        }
        if (i < to && b[i] != ';') {
            throw lines.fault(
                    Fault.BAD_CHARACTER, "words behind the checksum", "nothing behind it");
        }
    }
}
