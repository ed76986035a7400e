// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

/**
 * One quantity over a whole replay. One component a figure of the summary.
 *
 * @param name of the quantity
 * @param unit SI
 * @param worst value of largest size, with its sign [unit]
 * @param time when [s]
 * @param line of the toolpath, 0 where there is none
 * @param x commanded place of the carriage origin along the bridge then [m]
 * @param y commanded place of the bridge then [m]
 * @param rms root of the mean square [unit]
 * @param median size that half of all instants stay under [unit]
 * @param p95 size that 95 % stay under [unit]
 * @param p99 size that 99 % stay under [unit]
 */
public record ChannelResult(
        String name,
        String unit,
        double worst,
        double time,
        long line,
        double x,
        double y,
        double rms,
        double median,
        double p95,
        double p99) {
    /** Largest size [unit]. */
    public double peak() {
        return Math.abs(worst);
    }
}
