// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.quantity.Dimension;
import foldwright.quantity.NotAQuantity;
import foldwright.quantity.Quantity;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.play.Reel;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A moment of a run.
 *
 * @param seconds since its start; empty for its worst moment [s]
 */
public record TimeWish(OptionalDouble seconds) {
    /** Times are told to a tenth of a second, and may be typed back [s]. */
    private static final double ROUNDING = 0.05;

    /** Where the run is worst. */
    public static final TimeWish WORST = new TimeWish(OptionalDouble.empty());

    /** Puts a run to the moment. */
    void put(Reel reel) {
        reel.player().seek(seconds.orElseGet(reel::worst));
    }

    /** Why a time cannot be shown, where it lies outside the run by more than rounding. */
    Optional<String> beyond(Reel reel) {
        double start = reel.run().table().start();
        double end = reel.run().table().end();
        double t = seconds.orElse(start);
        return t < start - ROUNDING || t > end + ROUNDING
                ? Optional.of(
                        "--time: found "
                                + Numerals.with(t, Shown.SECOND)
                                + ", allowed: "
                                + Numerals.with(start, Shown.SECOND)
                                + " to "
                                + Numerals.with(end, Shown.SECOND)
                                + ", the length of the run")
                : Optional.empty();
    }

    /** Reads a time. */
    public static final class Reader implements ITypeConverter<TimeWish> {
        @Override
        public TimeWish convert(String text) {
            if (text.strip().toLowerCase(Locale.ROOT).equals("worst")) {
                return WORST;
            }
            try {
                return new TimeWish(OptionalDouble.of(Quantity.read(text, Dimension.TIME)));
            } catch (NotAQuantity e) {
                throw new TypeConversionException(
                        "found \"" + text + "\", allowed: worst, or a time such as \"18.7 s\"");
            }
        }
    }
}
