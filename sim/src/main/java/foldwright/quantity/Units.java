// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The units this program knows, and the reading of compound ones such as {@code N·m/rad}.
 *
 * <p>A compound unit is a row of unit symbols joined by {@code ·} or {@code *}, with at most one
 * {@code /} before each divisor, each with an optional exponent ({@code mm2}, {@code mm^2}, {@code
 * mm²}). SI prefixes from nano to giga stand before the units that take them.
 */
public final class Units {
    private static final Map<String, Unit> SYMBOLS = symbols();
    private static final Map<String, Unit> KNOWN = new ConcurrentHashMap<>();

    private Units() {}

    /**
     * The unit a text names.
     *
     * @throws IllegalArgumentException if the text is no unit; for program texts, not for input
     */
    public static Unit of(String text) {
        Unit known = read(text);
        if (known == null) {
            throw new IllegalArgumentException("no such unit: " + text);
        }
        return known;
    }

    /** The unit a text names, or nothing. An empty text is the unit one. */
    public static Optional<Unit> find(String text) {
        return Optional.ofNullable(read(text));
    }

    /** The unit a text names, or null; printing asks this all the time, without objects. */
    private static Unit read(String text) {
        Unit known = KNOWN.get(text);
        if (known == null) {
            known = new Expression(text).read();
            if (known != null && KNOWN.size() < 4096) {
                KNOWN.put(text, known);
            }
        }
        return known;
    }

    private static Map<String, Unit> symbols() {
        Map<String, Unit> table = new HashMap<>();
        for (Prefixed unit : Prefixed.values()) {
            for (String spelling : unit.spellings) {
                for (Prefix prefix : unit.prefixes) {
                    for (String sign : prefix.signs) {
                        String text = prefix.signs[0] + unit.spellings[0];
                        BigDecimal size =
                                BigDecimal.ONE.scaleByPowerOfTen(prefix.power + unit.power);
                        table.put(sign + spelling, Unit.decimal(text, unit.exponents, size));
                    }
                }
            }
        }
        angle(table, Math.PI / 180, "°", "deg", "degree", "degrees");
        angle(table, 2 * Math.PI, "rev", "turn", "turns");
        Dimension.Exponents perSecond = Dimension.ROTATION_SPEED.exponents();
        Unit perMinute =
                new Unit("rpm", perSecond, BigDecimal.ONE, new BigDecimal(60), 2 * Math.PI);
        table.put("rpm", perMinute);
        table.put("rev/min", perMinute);
        plain(table, "min", Dimension.TIME, "60");
        plain(table, "h", Dimension.TIME, "3600");
        plain(table, "cm", Dimension.LENGTH, "0.01");
        plain(table, "t", Dimension.MASS, "1000");
        plain(table, "l", new Dimension.Exponents(3, 0, 0, 0, 0), "0.001");
        plain(table, "bar", Dimension.STRESS, "100000");
        plain(table, "%", Dimension.RATIO, "0.01");
        plain(table, "‰", Dimension.RATIO, "0.001");
        plain(table, "1", Dimension.RATIO, "1");
        return Map.copyOf(table);
    }

    private static void plain(Map<String, Unit> table, String text, Dimension of, String size) {
        plain(table, text, of.exponents(), size);
    }

    private static void plain(
            Map<String, Unit> table, String text, Dimension.Exponents of, String size) {
        table.put(text, Unit.decimal(text, of, new BigDecimal(size)));
    }

    private static void angle(Map<String, Unit> table, double radians, String... spellings) {
        for (String spelling : spellings) {
            Dimension.Exponents exponents = Dimension.ANGLE.exponents();
            Unit unit = new Unit(spellings[0], exponents, BigDecimal.ONE, BigDecimal.ONE, radians);
            table.put(spelling, unit);
        }
    }

    /** SI prefixes with every sign they are written with; the first is the one printed. */
    private enum Prefix {
        NANO(-9, "n"),
        MICRO(-6, "µ", "μ", "u"),
        MILLI(-3, "m"),
        NONE(0, ""),
        KILO(3, "k"),
        MEGA(6, "M"),
        GIGA(9, "G");

        private static final Prefix[] SMALL = {NANO, MICRO, MILLI, NONE, KILO};
        private static final Prefix[] ALL = values();

        private final int power;
        private final String[] signs;

        Prefix(int power, String... signs) {
            this.power = power;
            this.signs = signs;
        }
    }

    /** Units that take prefixes; {@code power} is the power of ten of the unprefixed unit in SI. */
    private enum Prefixed {
        METRE(Dimension.LENGTH, 0, Prefix.SMALL, "m"),
        GRAM(Dimension.MASS, -3, Prefix.SMALL, "g"),
        SECOND(Dimension.TIME, 0, Prefix.SMALL, "s"),
        RADIAN(Dimension.ANGLE, 0, Prefix.SMALL, "rad"),
        NEWTON(Dimension.FORCE, 0, Prefix.ALL, "N"),
        PASCAL(Dimension.STRESS, 0, Prefix.ALL, "Pa"),
        JOULE(Dimension.ENERGY, 0, Prefix.ALL, "J"),
        WATT(Dimension.POWER, 0, Prefix.ALL, "W"),
        VOLT(Dimension.VOLTAGE, 0, Prefix.ALL, "V"),
        AMPERE(Dimension.CURRENT, 0, Prefix.ALL, "A"),
        OHM(Dimension.RESISTANCE, 0, Prefix.ALL, "Ω", "\u2126", "ohm", "Ohm"),
        HENRY(Dimension.INDUCTANCE, 0, Prefix.ALL, "H"),
        HERTZ(Dimension.FREQUENCY, 0, Prefix.ALL, "Hz");

        private final Dimension.Exponents exponents;
        private final int power;
        private final Prefix[] prefixes;
        private final String[] spellings;

        Prefixed(Dimension dimension, int power, Prefix[] prefixes, String... spellings) {
            this.exponents = dimension.exponents();
            this.power = power;
            this.prefixes = prefixes;
            this.spellings = spellings;
        }
    }

    /** Reads one compound unit from left to right. */
    private static final class Expression {
        private static final String RAISED = "⁰¹²³⁴";
        private static final int LONGEST = 40;

        private final String text;
        private Dimension.Exponents exponents = Dimension.Exponents.NONE;
        private BigDecimal decimal = BigDecimal.ONE;
        private BigDecimal divisor = BigDecimal.ONE;
        private double irrational = 1;

        Expression(String text) {
            this.text = text.strip();
        }

        /** The unit, or null where the text is none. */
        Unit read() {
            if (text.length() > LONGEST) {
                return null;
            }
            Unit symbol = SYMBOLS.get(text.isEmpty() ? "1" : text);
            if (symbol != null) {
                return symbol;
            }
            int sign = 1;
            for (int at = 0; at < text.length(); ) {
                int end = endOfFactor(at);
                if (!multiply(text.substring(at, end).strip(), sign)) {
                    return null;
                }
                if (end == text.length()) {
                    return new Unit(printed(), exponents, decimal, divisor, irrational);
                }
                sign = text.charAt(end) == '/' ? -1 : sign;
                at = end + 1;
            }
            return null; // ends in an operator
        }

        private int endOfFactor(int from) {
            int at = from;
            while (at < text.length() && "·⋅*×/".indexOf(text.charAt(at)) < 0) {
                at++;
            }
            return at;
        }

        private boolean multiply(String factor, int sign) {
            int end = factor.length();
            while (end > 0 && isExponent(factor.charAt(end - 1))) {
                end--;
            }
            String exponent = factor.substring(end);
            Unit unit = SYMBOLS.get(end == 0 ? factor : factor.substring(0, end));
            int power = end == 0 || exponent.isEmpty() ? 1 : power(exponent);
            if (unit == null || power < 1) {
                return false;
            }
            exponents = exponents.plus(unit.exponents(), sign * power);
            BigDecimal up = unit.decimal().pow(power);
            BigDecimal down = unit.divisor().pow(power);
            decimal = decimal.multiply(sign > 0 ? up : down);
            divisor = divisor.multiply(sign > 0 ? down : up);
            irrational *= Math.pow(unit.irrational(), (double) sign * power);
            return true;
        }

        private static boolean isExponent(char c) {
            return c == '^' || c >= '0' && c <= '9' || RAISED.indexOf(c) >= 0;
        }

        private static int power(String exponent) {
            String digits = exponent.startsWith("^") ? exponent.substring(1) : exponent;
            if (digits.length() != 1) {
                return -1;
            }
            char c = digits.charAt(0);
            return c >= '1' && c <= '4' ? c - '0' : RAISED.indexOf(c);
        }

        private String printed() {
            String raised =
                    text.replace("*", "·").replace("⋅", "·").replace("×", "·").replace("^", "");
            StringBuilder out = new StringBuilder();
            for (int i = 0; i < raised.length(); i++) {
                char c = raised.charAt(i);
                boolean digit = c >= '2' && c <= '4' && i > 0;
                out.append(digit ? RAISED.charAt(c - '0') : c == 'u' ? 'µ' : c);
            }
            return out.toString();
        }
    }
}
