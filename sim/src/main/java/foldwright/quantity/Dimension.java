// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

/**
 * A kind of physical quantity this program reads or prints, with its exponents of metre, kilogram,
 * second, ampere and radian.
 *
 * <p>The radian counts as a base unit here, so that a torque (N·m) and a torsional stiffness
 * (N·m/rad), or a length and an angle, can never be taken for each other.
 */
public enum Dimension {
    /** A pure number: friction, efficiency, ratio, damping share [1]. */
    RATIO("a number or per cent", "1", 0, 0, 0, 0, 0),
    /** Length [m]. */
    LENGTH("length", "mm", 1, 0, 0, 0, 0),
    /** Area [m²]. */
    AREA("area", "mm²", 2, 0, 0, 0, 0),
    /** Second moment of area or torsion constant [m⁴]. */
    SECOND_MOMENT("second moment of area", "mm⁴", 4, 0, 0, 0, 0),
    /** Plane angle [rad]. */
    ANGLE("angle", "°", 0, 0, 0, 0, 1),
    /** Mass [kg]. */
    MASS("mass", "kg", 0, 1, 0, 0, 0),
    /** Time [s]. */
    TIME("time", "s", 0, 0, 1, 0, 0),
    /** Force [N]. */
    FORCE("force", "N", 1, 1, -2, 0, 0),
    /** Torque or moment of a force [N·m]. */
    TORQUE("torque", "N·m", 2, 1, -2, 0, 0),
    /** Linear stiffness, spring rate, belt stiffness a width [N/m]. */
    STIFFNESS("stiffness", "N/mm", 0, 1, -2, 0, 0),
    /** Torsional or tilting stiffness [N·m/rad]. */
    TORSION_STIFFNESS("torsional stiffness", "N·m/rad", 2, 1, -2, 0, -1),
    /** Linear damping [N·s/m]. */
    DAMPING("damping", "N·s/m", 0, 1, -1, 0, 0),
    /** Velocity [m/s]. */
    SPEED("speed", "mm/s", 1, 0, -1, 0, 0),
    /** Acceleration [m/s²]. */
    ACCELERATION("acceleration", "m/s²", 1, 0, -2, 0, 0),
    /** Change of acceleration a time [m/s³]. */
    JERK("jerk", "m/s³", 1, 0, -3, 0, 0),
    /** Angular velocity [rad/s]. */
    ROTATION_SPEED("rotation speed", "rev/s", 0, 0, -1, 0, 1),
    /** Angular acceleration [rad/s²]. */
    ROTATION_ACCELERATION("rotation acceleration", "rev/s²", 0, 0, -2, 0, 1),
    /** Frequency [1/s]. */
    FREQUENCY("frequency", "Hz", 0, 0, -1, 0, 0),
    /** Moment of inertia [kg·m²]. */
    INERTIA("moment of inertia", "g·cm²", 2, 1, 0, 0, 0),
    /** Mass a length [kg/m]. */
    MASS_PER_LENGTH("mass a length", "g/m", -1, 1, 0, 0, 0),
    /** Mass density [kg/m³]. */
    DENSITY("density", "kg/m³", -3, 1, 0, 0, 0),
    /** Pressure, stress or elastic modulus [Pa]. */
    STRESS("stress", "MPa", -1, 1, -2, 0, 0),
    /** Energy [J]. */
    ENERGY("energy", "J", 2, 1, -2, 0, 0),
    /** Power [W]. */
    POWER("power", "W", 2, 1, -3, 0, 0),
    /** Electric voltage [V]. */
    VOLTAGE("voltage", "V", 2, 1, -3, -1, 0),
    /** Electric current [A]. */
    CURRENT("current", "A", 0, 0, 0, 1, 0),
    /** Electric resistance [Ω]. */
    RESISTANCE("resistance", "Ω", 2, 1, -3, -2, 0),
    /** Inductance [H]. */
    INDUCTANCE("inductance", "mH", 2, 1, -2, -2, 0),
    /** Linear compliance [m/N]. */
    COMPLIANCE("compliance", "mm/N", 0, -1, 2, 0, 0);

    private final String words;
    private final String usualUnit;
    private final Exponents exponents;

    Dimension(String words, String usualUnit, int m, int kg, int s, int ampere, int rad) {
        this.words = words;
        this.usualUnit = usualUnit;
        this.exponents = new Exponents(m, kg, s, ampere, rad);
    }

    /** The name a person reads, in lower case. */
    public String words() {
        return words;
    }

    /** The unit this quantity is usually written in, as {@link Units#of} reads it. */
    public String usualUnit() {
        return usualUnit;
    }

    /** The exponents of the base units. */
    public Exponents exponents() {
        return exponents;
    }

    /**
     * Exponents of the base units of a unit or dimension.
     *
     * @param m of metre
     * @param kg of kilogram
     * @param s of second
     * @param ampere of ampere
     * @param rad of radian
     */
    public record Exponents(int m, int kg, int s, int ampere, int rad) {
        /** No base unit at all. */
        public static final Exponents NONE = new Exponents(0, 0, 0, 0, 0);

        /** These exponents plus {@code power} times others: the exponents of the product. */
        public Exponents plus(Exponents other, int power) {
            return new Exponents(
                    m + power * other.m,
                    kg + power * other.kg,
                    s + power * other.s,
                    ampere + power * other.ampere,
                    rad + power * other.rad);
        }

        /** As every record's, but written out: made at run time it would cost each start 20 ms. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Exponents e
                    && m == e.m
                    && kg == e.kg
                    && s == e.s
                    && ampere == e.ampere
                    && rad == e.rad;
        }

        @Override
        public int hashCode() {
            return (((m * 31 + kg) * 31 + s) * 31 + ampere) * 31 + rad;
        }
    }
}
