// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * A unit of measure: a text, the exponents of its base units, and its size in SI.
 *
 * <p>The size is kept as a fraction of decimal numbers times a power of pi (degrees and
 * revolutions), so that units such as mm or mm/min convert without rounding: {@code "57.3 mm"}
 * becomes the double nearest to 0.0573.
 *
 * @param text as printed, e.g. {@code N·m}
 * @param exponents of the base units
 * @param decimal numerator of the size in SI
 * @param divisor denominator of the size in SI
 * @param irrational remaining factor of the size in SI, 1 for all units but degrees and revolutions
 */
public record Unit(
        String text,
        Dimension.Exponents exponents,
        BigDecimal decimal,
        BigDecimal divisor,
        double irrational) {

    /** Digits of the quotient: more than twice those of a double, so that one rounding remains. */
    private static final MathContext EXACT_ENOUGH = new MathContext(40);

    /** Checks that nothing is missing and that the size is positive. */
    public Unit {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(exponents, "exponents");
        if (decimal.signum() <= 0 || divisor.signum() <= 0 || !(irrational > 0)) {
            throw new IllegalArgumentException("unit " + text + ": its size must be positive");
        }
    }

    /** A unit whose size is a decimal number. */
    static Unit decimal(String text, Dimension.Exponents exponents, BigDecimal size) {
        return new Unit(text, exponents, size, BigDecimal.ONE, 1);
    }

    /** Whether a value in this unit is of the given dimension. */
    public boolean measures(Dimension dimension) {
        return exponents.equals(dimension.exponents());
    }

    /** One of it, within a few roundings of a double [SI]. */
    double size() {
        return decimal.doubleValue() / divisor.doubleValue() * irrational;
    }

    /** A number in this unit as an SI double [SI]. */
    public double toSi(BigDecimal number) {
        BigDecimal scaled = number.multiply(decimal);
        boolean whole = divisor.equals(BigDecimal.ONE);
        double rational = (whole ? scaled : scaled.divide(divisor, EXACT_ENOUGH)).doubleValue();
        return irrational == 1.0 ? rational : rational * irrational;
    }

    /** An SI double as a number in this unit; a value that is not finite stays as it is. */
    public double fromSi(double si) {
        if (!Double.isFinite(si)) {
            return si;
        }
        double rational = irrational == 1.0 ? si : si / irrational;
        return BigDecimal.valueOf(rational)
                .multiply(divisor)
                .divide(decimal, EXACT_ENOUGH)
                .doubleValue();
    }
}
