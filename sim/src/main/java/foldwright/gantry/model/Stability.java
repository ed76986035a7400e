// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Travel;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How long a step may be.
 *
 * @param highest highest angular frequency over the corners of the travel, all play closed, all
 *     friction sticking [rad/s]
 * @param step the step to use [s]
 * @param halvings how often the step asked for was halved
 */
public record Stability(double highest, double step, int halvings) {
    /**
     * Limit of frequency times step. The explicit step is stable to 2 without damping; damping that
     * lags half a step takes its share.
     */
    public static final double LIMIT = 1.2;

    /** Halves a step until it is stable for a model. */
    public static Stability of(GantryModel model, double asked) {
        Checks.positive("step", asked);
        Travel t = model.layout().travel();
        double highest = 0;
        for (double x : new double[] {t.xMin(), t.xMid(), t.xMax()}) {
            for (double y : new double[] {t.yMin(), t.yMax()}) {
                highest = Math.max(highest, highest(model, x, y));
            }
        }
        double step = asked;
        int halvings = 0;
        while (highest * step > LIMIT) {
            step /= 2;
            halvings++;
        }
        return new Stability(highest, step, halvings);
    }

    private static double highest(GantryModel model, double x, double y) {
        Statics statics = new Statics(Modes.taut(model), Statics.Hold.FIELDS);
        GantryKernel kernel = statics.kernel();
        kernel.stand(x, y);
        RealMatrix k = statics.stiffness();
        stick(model, k, kernel);
        var modes = Modes.of(k, statics.masses()).modes();
        return 2 * Math.PI * modes.get(modes.size() - 1).frequency();
    }

    /** Adds the springs of friction that sticks. */
    private static void stick(GantryModel model, RealMatrix k, GantryKernel kernel) {
        double w = model.bridgeGuide().halfSpan();
        RidingLoad riding = kernel.riding;
        if (model.bridgeGuide().leftFriction() + riding.dragY() > 0) {
            k.addToEntry(1, 1, 2 * GantryKernel.STICK);
            k.addToEntry(2, 2, 2 * GantryKernel.STICK * w * w);
        }
        if (model.carriageGuide().friction() + riding.dragX() > 0) {
            k.addToEntry(0, 0, GantryKernel.STICK);
            k.addToEntry(3, 3, GantryKernel.STICK);
            k.addToEntry(0, 3, -GantryKernel.STICK);
            k.addToEntry(3, 0, -GantryKernel.STICK);
        }
        for (int a = 0; a < kernel.axles.rotors.length; a++) {
            k.addToEntry(6 + a, 6 + a, kernel.axles.rotors[a].stick);
        }
    }
}
