// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.Modes;
import foldwright.gantry.model.Statics;
import foldwright.gantry.route.Travel;
import java.util.ArrayList;
import java.util.List;

/**
 * Natural frequencies and shapes of a gantry at the middle and at the corners of its travel: motors
 * in their fields, play closed, belts taut, no damping.
 *
 * @param places the middle first
 */
public record GantryModes(List<At> places) {

    /**
     * Modes at one place.
     *
     * @param x of the carriage [m]
     * @param y of the bridge [m]
     * @param modes by rising frequency
     */
    public record At(double x, double y, List<Shape> modes) {
        public At {
            modes = List.copyOf(modes);
        }
    }

    /**
     * A mode and what moves most in it, by kinetic energy.
     *
     * @param mode frequency and shape
     * @param mostly in words
     */
    public record Shape(Modes.Mode mode, String mostly) {}

    public GantryModes {
        places = List.copyOf(places);
    }

    /** Modes of a gantry. */
    public static GantryModes of(GantryModel model) {
        Travel t = model.layout().travel();
        List<At> out = new ArrayList<>();
        out.add(at(model, t.xMid(), t.yMid()));
        for (double y : new double[] {t.yMin(), t.yMax()}) {
            for (double x : new double[] {t.xMin(), t.xMax()}) {
                out.add(at(model, x, y));
            }
        }
        return new GantryModes(out);
    }

    private static At at(GantryModel model, double x, double y) {
        List<Shape> shapes =
                Modes.at(model, x, y, Statics.Hold.FIELDS).modes().stream()
                        .map(m -> new Shape(m, mostly(model, m)))
                        .toList();
        return new At(x, y, shapes);
    }

    /** The part with the largest share of the kinetic energy; the motors have what is left. */
    private static String mostly(GantryModel model, Modes.Mode m) {
        double bridge = model.bridge().mass();
        double carriage = model.carriage().mass();
        double along = carriage * m.carriageX() * m.carriageX();
        double rails = bridge * m.bridgeY() * m.bridgeY();
        double across = carriage * m.carriageY() * m.carriageY();
        double skew = model.bridge().yawInertia() * m.skew() * m.skew();
        double yaw = model.carriage().yawInertia() * m.carriageYaw() * m.carriageYaw();
        double sideways = bridge * m.bridgeX() * m.bridgeX();
        // A bridge that skews takes an off-centre carriage along.
        double swung = skew > rails ? across : 0;
        double[] shares = {
            along,
            rails + across - swung,
            skew + swung,
            yaw,
            sideways,
            1 - along - rails - across - skew - yaw - sideways
        };
        String[] words = {
            "carriage along the bridge",
            "bridge along the rails",
            "skew of the bridge",
            "yaw of the carriage",
            "bridge across the rails",
            "motors in their fields"
        };
        int most = 0;
        for (int i = 1; i < shares.length; i++) {
            most = shares[i] > shares[most] ? i : most;
        }
        return words[most];
    }

    /** Lowest and highest frequency of the mode with a number over all places [Hz]. */
    public double[] range(int mode) {
        double[] all =
                places.stream().mapToDouble(p -> p.modes().get(mode).mode().frequency()).toArray();
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double f : all) {
            low = Math.min(low, f);
            high = Math.max(high, f);
        }
        return new double[] {low, high};
    }
}
