// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

/** One quantity over a replay: its largest size with sign, place and line, and its distribution. */
final class Channel {
    private final LogHistogram histogram = new LogHistogram();
    private final double[] saved;
    private double worst;
    private double size = -1;
    private double sumOfSquares;
    private double time;
    private long line;
    private double x;
    private double y;

    Channel(int savedSize) {
        saved = new double[savedSize];
    }

    /** Counts a value into the distribution. */
    void count(double value) {
        histogram.add(value);
        sumOfSquares += value * value;
    }

    /** Whether a value is the largest so far. */
    boolean exceeds(double value) {
        double s = Math.abs(value);
        if (s > size) {
            size = s;
            worst = value;
            return true;
        }
        return false;
    }

    /** Notes where the largest value occurred. */
    void note(double atTime, long atLine, double atX, double atY) {
        time = atTime;
        line = atLine;
        x = atX;
        y = atY;
    }

    double[] saved() {
        return saved;
    }

    double placeX() {
        return x;
    }

    double placeY() {
        return y;
    }

    ChannelResult result(String name, String unit) {
        double rms = histogram.count() == 0 ? 0 : Math.sqrt(sumOfSquares / histogram.count());
        return new ChannelResult(
                name,
                unit,
                worst,
                time,
                line,
                x,
                y,
                rms,
                histogram.percentile(0.5),
                histogram.percentile(0.95),
                histogram.percentile(0.99));
    }
}
