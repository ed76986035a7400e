// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A height to pose the machine at: a place in the travel or a length.
 *
 * @param place which place
 * @param metres the length, for {@link Place#LENGTH} [m]
 */
public record HeightWish(Place place, double metres) {
    /** Heights are told in whole millimetres or tenths, and may be typed back [m]. */
    private static final double ROUNDING = 0.5e-3;

    /** Where the open question is worst. */
    public static final HeightWish WORST = new HeightWish(Place.WORST, 0);

    /** Places in the travel. */
    public enum Place {
        FLAT,
        WORST,
        TOP,
        LENGTH
    }

    /**
     * The height in the travel, held within it [m].
     *
     * @param worst where the open question is worst, if known [m]
     */
    public double in(double flat, double top, OptionalDouble worst) {
        double h =
                switch (place) {
                    case FLAT -> flat;
                    case TOP -> top;
                    case WORST -> worst.orElse((flat + top) / 2);
                    case LENGTH -> metres;
                };
        return Math.max(flat, Math.min(top, h));
    }

    /**
     * Why a length cannot be shown, where it lies outside the travel by more than rounding.
     *
     * @param flat lowest height [m]
     * @param top highest height [m]
     */
    Optional<String> beyond(double flat, double top) {
        boolean outside = metres < flat - ROUNDING || metres > top + ROUNDING;
        return place == Place.LENGTH && outside
                ? Optional.of(
                        "--height: found "
                                + Numerals.with(metres, Shown.MILLIMETRE)
                                + ", allowed: "
                                + Numerals.with(flat, Shown.MILLIMETRE)
                                + " to "
                                + Numerals.with(top, Shown.MILLIMETRE)
                                + " of deck pin height")
                : Optional.empty();
    }

    /** Reads a height. */
    public static final class Reader implements ITypeConverter<HeightWish> {
        @Override
        public HeightWish convert(String text) {
            String word = text.strip().toUpperCase(Locale.ROOT);
            for (Place p : Place.values()) {
                if (p != Place.LENGTH && p.name().equals(word)) {
                    return new HeightWish(p, 0);
                }
            }
            try {
                return new HeightWish(Place.LENGTH, Quantity.read(text, Dimension.LENGTH));
            } catch (NotAQuantity e) {
                throw new TypeConversionException(
                        "found \""
                                + text
                                + "\", allowed: flat, worst, top, or a length such as \"109 mm\"");
            }
        }
    }
}
