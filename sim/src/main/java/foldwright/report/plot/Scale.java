// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale from values to places.
 *
 * @param low value at {@code from}
 * @param high value at {@code to}, not equal to {@code low}
 * @param from place of the low value
 * @param to place of the high value
 */
public record Scale(double low, double high, double from, double to) {
    public Scale {
        if (!(high > low)) {
            throw new IllegalArgumentException("scale from " + low + " to " + high);
        }
    }

    /** Place of a value. */
    public double at(double value) {
        return from + (value - low) / (high - low) * (to - from);
    }

    /** Value at a place. */
    public double value(double place) {
        return low + (place - from) / (to - from) * (high - low);
    }

    /** A value held between the ends. */
    public double held(double value) {
        return Math.min(high, Math.max(low, value));
    }

    /** Round values inside the scale, at most {@code most} of them. */
    public List<Double> ticks(int most) {
        double step = step(high - low, most);
        List<Double> out = new ArrayList<>();
        long first = (long) Math.ceil(low / step - 1e-9);
        long last = (long) Math.floor(high / step + 1e-9);
        for (long i = first; i <= last; i++) {
            out.add(i * step);
        }
        return out;
    }

    /** Decimals that tell the ticks apart. */
    public int decimals(int most) {
        double step = step(high - low, most);
        return (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    }

    /** The step of 1, 2 or 5 times a power of ten that cuts a range in at most so many parts. */
    static double step(double range, int most) {
        double rough = range / most;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= rough * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** A round value not below the given one, for the end of a scale that begins at zero. */
    static double roundUp(double value) {
        double step = step(value, 5);
        return step * Math.ceil(value / step - 1e-9);
    }
}
