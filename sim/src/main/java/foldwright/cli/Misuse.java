// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.keys.Keys;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** Words that could not be understood as a command: what was found, what is allowed. */
final class Misuse {
    /** How the reader of command lines begins what a converter said. */
    private static final Pattern PREFACE =
            Pattern.compile(
                    "^Invalid value for (?:option '(.*?)'|positional parameter at index \\d+"
                            + " \\((.*?)\\)): ");

    private Misuse() {}

    /** The file that a word names. */
    static Path path(String word) {
        if (word.isBlank()) {
            throw new TypeConversionException("found an empty name, allowed: the name of a file");
        }
        try {
            return Path.of(word);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    "found \"" + word + "\", allowed: the name of a file");
        }
    }

    /** What is wrong, beginning with a small letter. */
    static String words(ParameterException e) {
        ArgSpec arg = e.getArgSpec();
        if (arg != null && e.getValue() != null) {
            String allowed = allowed(arg);
            if (!allowed.isEmpty()) {
                return name(arg) + ": found \"" + e.getValue() + "\", allowed: " + allowed;
            }
        }
        String message = PREFACE.matcher(e.getMessage()).replaceFirst("$1$2: ");
        boolean word = message.length() > 1 && Character.isLowerCase(message.charAt(1));
        return word
                ? message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1)
                : message;
    }

    private static String name(ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    }

    /** What the type of an argument allows; empty where its own message says so. */
    private static String allowed(ArgSpec arg) {
        Class<?> type = arg.type();
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .map(c -> Keys.word((Enum<?>) c))
                    .collect(Collectors.joining(", "));
        }
        if (type == boolean.class || type == Boolean.class) {
            return "the option alone, without a value";
        }
        return type == double.class || type == int.class ? "a number" : "";
    }
}
