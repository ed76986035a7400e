// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Statics;
import foldwright.machine.gantry.Gantry;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The gantry under steady acceleration, carriage at even places along the bridge, bridge in the
 * middle of its travel: where it skews and strays most. Quasi-static, rotors on their commands, no
 * rail friction.
 */
final class GantrySweep {
    private static final int PLACES = 7;
    private static final int SECANTS = 12;

    /** Part of the travel that is used; at its very ends the stops carry load. */
    private static final double USED = 0.96;

    private final GantryModel model;
    private final Statics statics;
    private final Statics yielding;
    private int missed;
    private final double low;
    private final double high;
    private final double y;

    GantrySweep(Gantry gantry) {
        model = GantryAssembly.of(gantry);
        statics = new Statics(model, Statics.Hold.ROTORS);
        yielding = new Statics(model, Statics.Hold.FIELDS);
        double half = 0.5 * USED * gantry.bridge().travel().length();
        low = gantry.bridge().travel().middle() - half;
        high = gantry.bridge().travel().middle() + half;
        y = gantry.legs().travel().middle();
    }

    /** Which way the gantry is accelerated. */
    enum Way {
        ALONG_BRIDGE("the carriage starts along the bridge"),
        ALONG_RAILS("the bridge starts along the rails");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        private Load load(double acceleration) {
            return this == ALONG_BRIDGE
                    ? Load.accelerating(acceleration, 0)
                    : Load.accelerating(0, acceleration);
        }
    }

    /**
     * The worst found.
     *
     * @param size of what was asked for [SI]
     * @param way how it is accelerated there
     * @param place of the carriage along the bridge [m]
     * @param state there
     */
    record Worst(double size, Way way, double place, GantryState state) {}

    GantryModel model() {
        return model;
    }

    /** Places of the carriage along the bridge [m]. */
    double[] places() {
        double[] out = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            out[i] = low + (high - low) * i / (PLACES - 1);
        }
        return out;
    }

    /**
     * Settles at a place; the acceleration may be negative [m/s²]. Nearly free play can keep the
     * statics from settling; the rotors are then let hang behind their fields, which is tried once.
     * Empty where neither settles, and counted.
     */
    Optional<GantryState> at(double place, Way way, double acceleration) {
        Load load = way.load(acceleration);
        for (Statics s : List.of(statics, yielding)) {
            try {
                return Optional.of(s.settle(place, y, load));
            } catch (IllegalStateException e) {
                missed++;
            }
        }
        return Optional.empty();
    }

    /** How often no balance was found so far. */
    int missed() {
        return missed / 2;
    }

    /** The place and way, of both signs, at which a size is largest. */
    Worst worst(double acceleration, ToDoubleFunction<GantryState> size) {
        Worst worst = null;
        for (Way way : Way.values()) {
            Worst here = worst(way, acceleration, size);
            worst = worst == null || here.size() > worst.size() ? here : worst;
        }
        return worst;
    }

    /** The place at which a size is largest for one way, both signs. */
    Worst worst(Way way, double acceleration, ToDoubleFunction<GantryState> size) {
        Worst worst = null;
        for (double place : places()) {
            for (int sign = -1; sign <= 1; sign += 2) {
                Optional<GantryState> state = at(place, way, sign * acceleration);
                double here = state.map(st -> Math.abs(size.applyAsDouble(st))).orElse(-1.0);
                if (here >= 0 && (worst == null || here > worst.size())) {
                    worst = new Worst(here, way, place, state.get());
                }
            }
        }
        if (worst == null) {
            throw new IllegalStateException(
                    "the gantry finds no balance anywhere when " + way.words());
        }
        return worst;
    }

    /**
     * The largest acceleration that keeps a size within a limit; infinite above {@code most}, zero
     * where the limit is broken at rest [m/s²].
     */
    double largest(Way way, double limit, double most, ToDoubleFunction<GantryState> size) {
        double below = 0;
        double atBelow = worst(way, 1e-6 * most, size).size();
        if (atBelow > limit) {
            return 0;
        }
        double above = most;
        double atAbove = worst(way, most, size).size();
        if (atAbove <= limit) {
            return Double.POSITIVE_INFINITY;
        }
        // Play first, then straight with the acceleration: the secant lands at once or nearly so.
        for (int i = 0; i < SECANTS && above - below > 1e-3 * above; i++) {
            double part = (limit - atBelow) / (atAbove - atBelow);
            double a = below + Math.min(0.95, Math.max(0.05, part)) * (above - below);
            double at = worst(way, a, size).size();
            if (Math.abs(at - limit) <= 1e-3 * limit) {
                return a;
            }
            if (at <= limit) {
                below = a;
                atBelow = at;
            } else {
                above = a;
                atAbove = at;
            }
        }
        return below;
    }
}
