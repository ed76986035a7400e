// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A unit of measure: a text, the exponents of its base units, and its size in SI.
 *
 * <p>The size is kept as a decimal number times a power of pi/180 and of 2 pi (degrees and
 * revolutions), so that decimal units convert without rounding: {@code "57.3 mm"} becomes the
 * double nearest to 0.0573.
 *
 * @param text as printed, e.g. {@code N·m}
 * @param exponents of the base units
 * @param decimal decimal part of the size in SI
 * @param irrational remaining factor of the size in SI, 1 for all units but degrees and revolutions
 */
public record Unit(
        String text, Dimension.Exponents exponents, BigDecimal decimal, double irrational) {

    /** Checks that nothing is missing and that the size is positive. */
    public Unit {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(exponents, "exponents");
        if (decimal.signum() <= 0 || !(irrational > 0)) {
            throw new IllegalArgumentException("unit " + text + ": its size must be positive");
        }
    }

    /** Whether a value in this unit is of the given dimension. */
    public boolean measures(Dimension dimension) {
        return exponents.equals(dimension.exponents());
    }

    /** A number in this unit as an SI double [SI]. */
    public double toSi(BigDecimal number) {
        double decimalPart = number.multiply(decimal).doubleValue();
        return irrational == 1.0 ? decimalPart : decimalPart * irrational;
    }

    /** An SI double as a number in this unit. */
    public double fromSi(double si) {
        // Decimal units have a size or an inverse size that is a whole number, so one of the two
        // forms rounds only once.
        double size = decimal.doubleValue();
        double scaled = size < 1 ? si * Math.rint(1 / size * 1e6) / 1e6 : si / size;
        return scaled / irrational;
    }
}
