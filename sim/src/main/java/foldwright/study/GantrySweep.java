// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Statics;
import foldwright.machine.gantry.Gantry;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The gantry under steady acceleration, carriage at even places along the bridge, bridge in the
 * middle of its travel: where it skews and strays most. Quasi-static, fields on their commands, no
 * rail friction.
 */
public final class GantrySweep {
    private static final int PLACES = 7;

    private final GantryModel model;
    private final Statics statics;

    private final double low;
    private final double high;
    private final double y;

    private final List<List<Seen>> seen = new ArrayList<>();
    private double seenAt = Double.NaN;

    /** A settled state, how and where. */
    private record Seen(Way way, double acceleration, double place, GantryState state) {}

    /** A sweep over the gantry of a machine file. */
    public GantrySweep(Gantry gantry) {
        model = GantryAssembly.of(gantry);
        statics = new Statics(model, Statics.Hold.FIELDS);
        low = gantry.bridge().travel().low();
        high = gantry.bridge().travel().high();
        y = gantry.legs().travel().middle();
    }

    /** Which way the gantry is accelerated. */
    public enum Way {
        ALONG_BRIDGE("the carriage starts along the bridge"),
        ALONG_RAILS("the bridge starts along the rails");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /** As part of a sentence. */
        public String words() {
            return words;
        }

        /** As a load [m/s²]. */
        public Load load(double acceleration) {
            return this == ALONG_BRIDGE
                    ? Load.accelerating(acceleration, 0)
                    : Load.accelerating(0, acceleration);
        }
    }

    /**
     * The worst found.
     *
     * @param size of what was asked for [SI]
     * @param least the smallest it gets along the bridge under the same acceleration [SI]
     * @param way how it is accelerated there
     * @param acceleration the same with its sign [m/s²]
     * @param place of the carriage along the bridge [m]
     * @param state there
     */
    public record Worst(
            double size,
            double least,
            Way way,
            double acceleration,
            double place,
            GantryState state) {
        private static final double SAME = 0.999;

        /** Where that is, as part of a sentence. */
        public String words() {
            return way.words()
                    + (least > SAME * size
                            ? ", wherever the carriage stands"
                            : ", carriage at " + Numerals.with(place, Shown.MILLIMETRE));
        }
    }

    /** The model that is swept. */
    public GantryModel model() {
        return model;
    }

    /** Places of the carriage along the bridge [m]. */
    public double[] places() {
        double[] out = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            out[i] = low + (high - low) * i / (PLACES - 1);
        }
        return out;
    }

    /** Settles at a place; the acceleration may be negative [m/s²]. */
    public GantryState at(double place, Way way, double acceleration) {
        return statics.settle(place, y, way.load(acceleration));
    }

    /**
     * Settles at a place under any load.
     *
     * @param place of the carriage along the bridge [m]
     */
    public GantryState at(double place, Load load) {
        return statics.settle(place, y, load);
    }

    /** The place and way, of both signs, at which a size is largest; the first among equals. */
    public Worst worst(double acceleration, ToDoubleFunction<GantryState> size) {
        Worst worst = null;
        for (List<Seen> row : rows(acceleration)) {
            Worst here = along(row, size);
            worst = worst == null || Sizes.larger(here.size(), worst.size()) ? here : worst;
        }
        return worst;
    }

    /** The states under the acceleration of a worst case, at {@link #places()} in turn. */
    public List<GantryState> along(Worst worst) {
        return rows(Math.abs(worst.acceleration())).stream()
                .filter(row -> row.get(0).way() == worst.way())
                .filter(row -> row.get(0).acceleration() == worst.acceleration())
                .flatMap(List::stream)
                .map(Seen::state)
                .toList();
    }

    /** The place along the bridge at which a size is largest under one acceleration. */
    private static Worst along(List<Seen> row, ToDoubleFunction<GantryState> size) {
        double most = -1;
        double least = Double.POSITIVE_INFINITY;
        Seen worst = null;
        for (Seen s : row) {
            double here = Math.abs(size.applyAsDouble(s.state()));
            least = Math.min(least, here);
            if (worst == null || Sizes.larger(here, most)) {
                most = here;
                worst = s;
            }
        }
        return new Worst(
                most, least, worst.way(), worst.acceleration(), worst.place(), worst.state());
    }

    /**
     * All states under an acceleration, a row along the bridge for each way and sign; kept, since
     * several sizes are asked of them.
     */
    private List<List<Seen>> rows(double acceleration) {
        if (acceleration != seenAt) {
            seen.clear();
            for (Way way : Way.values()) {
                seen.add(row(way, -acceleration));
                seen.add(row(way, acceleration));
            }
            seenAt = acceleration;
        }
        return seen;
    }

    private List<Seen> row(Way way, double acceleration) {
        List<Seen> row = new ArrayList<>();
        for (double place : places()) {
            row.add(new Seen(way, acceleration, place, at(place, way, acceleration)));
        }
        return row;
    }
}
