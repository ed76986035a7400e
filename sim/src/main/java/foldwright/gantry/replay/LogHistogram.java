// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

/**
 * How often a size occurred, in bins that grow by 1/64 of an octave. Percentiles are interpolated
 * within a bin: exact to a fraction of 1.1 %. Sizes under 1e-12 share the first bin, over 1 the
 * last. Adding costs two shifts and allocates nothing.
 */
public final class LogHistogram {
    private static final int BITS = 6;
    private static final int SHIFT = 52 - BITS;
    private static final long LOWEST = Double.doubleToRawLongBits(1e-12) >>> SHIFT;
    private static final int BINS =
            (int) ((Double.doubleToRawLongBits(1.0) >>> SHIFT) - LOWEST) + 2;

    private final long[] bins = new long[BINS];
    private long count;

    /** Counts a size; the sign is dropped. */
    public void add(double value) {
        long bits = Double.doubleToRawLongBits(value) & Long.MAX_VALUE;
        long bin = (bits >>> SHIFT) - LOWEST + 1;
        bins[(int) Math.max(0, Math.min(BINS - 1, bin))]++;
        count++;
    }

    /** Number of sizes counted. */
    public long count() {
        return count;
    }

    /**
     * Size that a share of all stays under.
     *
     * @param share 0 to 1
     */
    public double percentile(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share is " + share + "; allowed: 0 to 1");
        }
        double target = share * count;
        long below = 0;
        for (int i = 0; i < BINS; i++) {
            if (below + bins[i] >= target && bins[i] > 0) {
                double within = (target - below) / bins[i];
                return i == 0 ? 0 : edge(i - 1) + within * (edge(i) - edge(i - 1));
            }
            below += bins[i];
        }
        return 0;
    }

    private static double edge(int i) {
        return Double.longBitsToDouble((LOWEST + i) << SHIFT);
    }
}
