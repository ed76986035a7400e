// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.keys.Range;
import foldwright.quantity.Dimension;
import foldwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Regular expressions for quantities of a dimension, with the units people write. */
final class QuantityPattern {
    private static final String DIGITS = "([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?";
    private static final List<String> SIMPLE =
            List.of(
                    "", "1", "%", "mm", "m", "cm", "um", "µm", "nm", "km", "kg", "g", "mg", "t",
                    "s", "ms", "us", "µs", "min", "h", "deg", "°", "degrees", "rad", "mrad", "rev",
                    "turn", "turns", "N", "mN", "kN", "J", "mJ", "W", "mW", "V", "mV", "A", "mA",
                    "ohm", "Ω", "mohm", "mΩ", "H", "mH", "uH", "µH", "Pa", "kPa", "MPa", "GPa",
                    "bar", "Hz", "kHz", "rpm");
    private static final List<String> COMPOUND =
            List.of(
                    "mm2",
                    "cm2",
                    "m2",
                    "mm4",
                    "cm4",
                    "m4",
                    "N*m",
                    "mN*m",
                    "N*mm",
                    "N*cm",
                    "kN*m",
                    "N/mm",
                    "N/m",
                    "kN/mm",
                    "kN/m",
                    "MN/m",
                    "N/um",
                    "N/µm",
                    "N*m/rad",
                    "N*mm/rad",
                    "N*m/deg",
                    "N*mm/deg",
                    "N*m/rev",
                    "N*s/m",
                    "N*s/mm",
                    "mm/s",
                    "m/s",
                    "mm/min",
                    "m/min",
                    "mm/s2",
                    "m/s2",
                    "mm/s3",
                    "m/s3",
                    "rev/s",
                    "rad/s",
                    "deg/s",
                    "turn/s",
                    "turns/s",
                    "rev/min",
                    "rev/s2",
                    "rad/s2",
                    "deg/s2",
                    "kg*m2",
                    "g*cm2",
                    "g*mm2",
                    "kg*mm2",
                    "kg*cm2",
                    "kg/m",
                    "g/m",
                    "g/mm",
                    "kg/m3",
                    "g/cm3",
                    "N/mm2",
                    "N/m2",
                    "mm/N",
                    "um/N",
                    "m/N");

    private QuantityPattern() {}

    /** A pattern that every such quantity in a common unit matches. */
    static String of(Dimension dimension, Range range) {
        String units =
                spellings().stream()
                        .filter(text -> Units.of(text).measures(dimension))
                        .sorted((a, b) -> b.length() - a.length())
                        .map(QuantityPattern::escaped)
                        .collect(Collectors.joining("|"));
        boolean neverNegative = range.low() >= 0;
        boolean neverZero = range.low() == 0 && !range.lowIn() || range.low() > 0;
        String sign = neverNegative ? "\\+?" : "[-+\u2212]?";
        String notZero = neverZero ? "(?=[^1-9a-zA-Z]*[1-9])" : "";
        return "^ *" + notZero + sign + DIGITS + " *(" + units + ") *$";
    }

    /** The unit of a dimension that an unknown one was probably meant to be. */
    static Optional<String> nearestUnit(String wrong, Dimension dimension) {
        List<String> units =
                Stream.concat(SIMPLE.stream(), COMPOUND.stream())
                        .filter(text -> !text.isEmpty() && Units.of(text).measures(dimension))
                        .toList();
        String letters = letters(wrong);
        Optional<String> same =
                units.stream().filter(unit -> letters(unit).equals(letters)).findFirst();
        // one letter off says little about a unit of one or two letters
        return same.isPresent() || wrong.length() < 3 ? same : Words.nearest(wrong, units);
    }

    private static String letters(String unit) {
        return unit.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}/%°]", "");
    }

    private static List<String> spellings() {
        List<String> all = new ArrayList<>(SIMPLE);
        for (String unit : COMPOUND) {
            for (String raised : List.of(unit, raised(unit), caret(unit))) {
                all.add(raised);
                all.add(raised.replace("*", "·"));
            }
        }
        return all.stream().distinct().toList();
    }

    private static String raised(String unit) {
        return unit.replace('2', '²').replace('3', '³').replace('4', '⁴');
    }

    private static String caret(String unit) {
        return unit.replace("2", "^2").replace("3", "^3").replace("4", "^4");
    }

    private static String escaped(String unit) {
        return Pattern.compile("[.*^]").matcher(unit).replaceAll("\\\\$0");
    }
}
