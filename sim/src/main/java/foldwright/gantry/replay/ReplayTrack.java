// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.model.GantryKernel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;

/**
 * Writes a replay as comma-separated values at a chosen rate; within each interval the smallest and
 * largest skew and tool error are kept, so that no peak is lost. Streams; memory does not grow.
 */
public final class ReplayTrack implements ReplayListener {
    private final Appendable out;
    private final double interval;
    private final double[] low = new double[3];
    private final double[] high = new double[3];
    private double next;
    private boolean begun;

    /**
     * Starts a track.
     *
     * @param rate rows a second
     */
    public ReplayTrack(Appendable out, double rate) {
        if (!(rate > 0)) {
            throw new IllegalArgumentException("rate is " + rate + "; allowed: above 0");
        }
        this.out = out;
        interval = 1 / rate;
    }

    @Override
    public void at(double time, long line, double x, double y, GantryKernel k) {
        double dx = k.toolX() - x - k.model().tool().x();
        double dy = k.toolY() - y - k.model().tool().y();
        if (!begun) {
            header(k);
            begun = true;
            clear();
        }
        widen(0, k.skew() * k.model().span());
        widen(1, dx);
        widen(2, dy);
        if (time + 1e-12 >= next) {
            row(time, line, x, y, k);
            clear();
            next += interval;
        }
    }

    private void widen(int i, double value) {
        low[i] = Math.min(low[i], value);
        high[i] = Math.max(high[i], value);
    }

    private void clear() {
        java.util.Arrays.fill(low, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(high, Double.NEGATIVE_INFINITY);
    }

    private void header(GantryKernel k) {
        StringBuilder text = new StringBuilder("time [s],line,x [mm],y [mm]");
        for (String q : new String[] {"skew end to end", "tool error x", "tool error y"}) {
            text.append(',').append(q).append(" [mm]");
            text.append(',').append(q).append(" min [mm]");
            text.append(',').append(q).append(" max [mm]");
        }
        for (String cause :
                new String[] {
                    "belt stretch",
                    "squareness",
                    "skew play",
                    "skew flex",
                    "block give",
                    "bridge bending",
                    "carriage twist",
                    "motor lag"
                }) {
            text.append(',').append(cause).append(" x [mm],").append(cause).append(" y [mm]");
        }
        k.system()
                .sections()
                .forEach(s -> text.append(",tension ").append(s.name()).append(" [N]"));
        k.model().motors().forEach(m -> text.append(",torque ").append(m.axle()).append(" [N·m]"));
        text.append(",guide moment [N·m],carriage side force [N],carriage yaw moment [N·m]");
        write(text.append("\r\n"));
    }

    private void row(double time, long line, double x, double y, GantryKernel k) {
        StringBuilder text = new StringBuilder();
        text.append(String.format(Locale.ROOT, "%.6f,%d", time, line));
        ErrorSplit e = ErrorSplit.of(k, x, y);
        millimetres(text, x, y);
        millimetres(text, k.skew() * k.model().span(), low[0], high[0]);
        millimetres(text, e.total().x(), low[1], high[1], e.total().y(), low[2], high[2]);
        for (ErrorSplit.Offset part :
                new ErrorSplit.Offset[] {
                    e.beltStretch(),
                    e.squareness(),
                    e.skewPlay(),
                    e.skewFlex(),
                    e.blockGive(),
                    e.bending(),
                    e.carriageTwist(),
                    e.motorLag()
                }) {
            millimetres(text, part.x(), part.y());
        }
        for (int i = 0; i < k.sections(); i++) {
            text.append(String.format(Locale.ROOT, ",%.4f", k.tension(i)));
        }
        for (int m = 0; m < k.motors(); m++) {
            text.append(String.format(Locale.ROOT, ",%.6f", k.motorTorque(m)));
        }
        text.append(
                String.format(
                        Locale.ROOT,
                        ",%.6f,%.4f,%.6f\r\n",
                        k.guideMoment(),
                        k.carriageForce(),
                        k.carriageMoment()));
        write(text);
    }

    private static void millimetres(StringBuilder text, double... metres) {
        for (double m : metres) {
            text.append(String.format(Locale.ROOT, ",%.6f", 1e3 * m));
        }
    }

    private void write(CharSequence text) {
        try {
            out.append(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
