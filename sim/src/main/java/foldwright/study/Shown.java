// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** The units in which results are shown to a person. */
public enum Shown {
    NEWTON("N", 1),
    NEWTON_METRE("N·m", 1),
    NEWTON_METRE_PER_RADIAN("N·m/rad", 1),
    NEWTON_PER_MILLIMETRE("N/mm", 1e3),
    MILLIMETRE("mm", 1e-3),
    METRE("m", 1),
    DEGREE("°", Math.PI / 180),
    MILLIRADIAN("mrad", 1e-3),
    SECOND("s", 1),
    HERTZ("Hz", 1),
    MILLIMETRE_PER_SECOND("mm/s", 1e-3),
    METRE_PER_SECOND_SQUARED("m/s²", 1),
    REVOLUTION_PER_SECOND("rev/s", 2 * Math.PI),
    KILOGRAM("kg", 1),
    JOULE("J", 1),
    WATT("W", 1),
    MEGAPASCAL("MPa", 1e6),
    PERCENT("%", 0.01),
    COUNT("", 1),
    NUMBER("", 1),
    TIMES("×", 1);

    private final String symbol;
    private final double si;

    Shown(String symbol, double si) {
        this.symbol = symbol;
        this.si = si;
    }

    /** Symbol as printed; empty for pure numbers. */
    public String symbol() {
        return symbol;
    }

    /** A value given in SI, in this unit. */
    public double fromSi(double value) {
        return value / si;
    }

    /** A value of this unit, in SI. */
    public double toSi(double value) {
        return value * si;
    }

    /** What stands between number and symbol: nothing, or a space that does not break. */
    public String gap() {
        return this == DEGREE || this == TIMES || symbol.isEmpty() ? "" : "\u00a0";
    }
}
