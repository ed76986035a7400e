// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.lift.Cause;
import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.HeightPlot;
import foldwright.study.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A needed amount over the height, split by cause: what loads is stacked to the right of zero in
 * the fixed order of causes, what helps lies left of it; the line in ink is the sum.
 */
public final class BudgetStack {
    private final Surface on;
    private final Type type;
    private final Scale height;
    private final Box box;
    private final HeightPlot plot;
    private final List<HeightPlot.Layer> layers;
    private final Scale x;

    /**
     * A stack.
     *
     * @param height heights [m] to y
     * @param box where the areas lie, without lettering
     */
    public BudgetStack(Surface on, Scale height, Box box, HeightPlot plot) {
        this.on = on;
        this.type = new Type(on.palette());
        this.height = height;
        this.box = box;
        this.plot = plot;
        layers = new ArrayList<>(plot.layers());
        layers.sort(Comparator.comparing(HeightPlot.Layer::cause));
        double most = 0;
        double least = 0;
        for (int i = 0; i < plot.height().size(); i++) {
            double up = 0;
            double down = 0;
            for (HeightPlot.Layer layer : layers) {
                up += Math.max(0, layer.values().at(i));
                down += Math.min(0, layer.values().at(i));
            }
            most = Math.max(most, up);
            least = Math.min(least, down);
        }
        Shown unit = plot.caption().unit();
        double high = Scale.roundUp(Math.max(1e-12, 1.02 * unit.fromSi(most)));
        double low = least < 0 ? -Scale.roundUp(-1.02 * unit.fromSi(least)) : 0;
        x = new Scale(low, high, box.x(), box.right());
    }

    /** Draws the stack with its ticks below. */
    public void draw() {
        int n = plot.height().size();
        double[] right = new double[n];
        double[] left = new double[n];
        for (HeightPlot.Layer layer : layers) {
            boolean helps = layer.values().min() < -layer.values().max();
            double[] base = helps ? left : right;
            double[] outer = new double[n];
            for (int i = 0; i < n; i++) {
                outer[i] = base[i] + value(layer.values().at(i));
            }
            on.fill(strip(base, outer), Fill.of(on.palette().cause(layer.cause())));
            on.stroke(line(outer), Pen.of(edge(layer.cause()), 1.2));
            System.arraycopy(outer, 0, base, 0, n);
        }
        double[] sum = new double[n];
        for (int i = 0; i < n; i++) {
            sum[i] = value(plot.needed().at(i));
        }
        on.stroke(line(sum), Pen.of(ink(Ground.PAPER), 4));
        on.stroke(line(sum), Pen.of(ink(Ground.INK), 2));
        bottom();
    }

    private Colour edge(Cause cause) {
        return ink(cause == Cause.INERTIA ? Ground.INK2 : Ground.PAPER);
    }

    private double value(double si) {
        double v = plot.caption().unit().fromSi(si);
        return Double.isFinite(v) ? v : 0;
    }

    private Path strip(double[] inner, double[] outer) {
        Path path = new Path();
        for (int i = 0; i < inner.length; i++) {
            path.point(x.at(x.held(inner[i])), height.at(plot.height().at(i)));
        }
        for (int i = outer.length - 1; i >= 0; i--) {
            path.point(x.at(x.held(outer[i])), height.at(plot.height().at(i)));
        }
        return path.close();
    }

    private Path line(double[] values) {
        Path path = new Path();
        for (int i = 0; i < values.length; i++) {
            path.point(x.at(x.held(values[i])), height.at(plot.height().at(i)));
        }
        return path;
    }

    private void bottom() {
        on.stroke(Path.line(x.at(0), box.y(), x.at(0), box.bottom()), Pen.of(ink(Ground.INK), 1));
        on.stroke(
                Path.line(box.x(), box.bottom(), box.right(), box.bottom()),
                Pen.of(ink(Ground.INK), 1));
        for (double tick : x.ticks(5)) {
            double at = x.at(tick);
            on.stroke(
                    Path.line(at, box.bottom(), at, box.bottom() + 5), Pen.of(ink(Ground.INK), 1));
            on.text(
                    at,
                    box.bottom() + 19,
                    Ticks.text(tick, x.decimals(5)),
                    type.tick().aligned(Align.MIDDLE));
        }
    }

    private Colour ink(Ground role) {
        return on.palette().ground(role);
    }
}
