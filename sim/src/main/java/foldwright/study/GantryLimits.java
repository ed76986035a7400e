// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.gantry.limits.AccelerationLimits;
import foldwright.gantry.limits.Allowed;
import foldwright.gantry.limits.FrictionCase;
import foldwright.gantry.limits.Heading;
import foldwright.gantry.limits.LimitPoint;
import foldwright.gantry.limits.RestSkew;
import foldwright.gantry.model.BeltMass;
import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.model.GantryModel;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The limits of a machine file applied to its gantry. */
public final class GantryLimits {
    private static final int PLACES = 3;

    private final Machine machine;
    private final Gantry gantry;
    private final GantryModel model;

    /** The limits of a machine that has a gantry. */
    public GantryLimits(Machine machine) {
        this.machine = machine;
        gantry = machine.gantry().orElseThrow();
        model = GantryAssembly.of(gantry);
    }

    /** Largest acceleration at three by three places in every direction. */
    public List<LimitPoint> map() {
        return limits().map(PLACES, PLACES);
    }

    /** The one of these places with the least acceleration in each direction, sooner found. */
    public Map<Heading, LimitPoint> least() {
        return limits().least(PLACES, PLACES);
    }

    private AccelerationLimits limits() {
        return new AccelerationLimits(model, allowed(), FrictionCase.NONE, gantry.moves().speed());
    }

    private Allowed allowed() {
        Allowed allowed = Allowed.running().withMotorMargin(machine.limits().motorMargin());
        if (machine.limits().skew().isPresent()) {
            allowed = allowed.withSkew(machine.limits().skew().getAsDouble());
        }
        if (machine.limits().toolError().isPresent()) {
            allowed = allowed.withToolError(machine.limits().toolError().getAsDouble());
        }
        var leg = gantry.legs().guide().block();
        var carriage = gantry.bridge().guide().block();
        return allowed.withBlocks(
                leg.staticMoment().orElse(Double.POSITIVE_INFINITY),
                leg.staticRating().orElse(Double.POSITIVE_INFINITY),
                carriage.staticMoment().orElse(Double.POSITIVE_INFINITY),
                carriage.staticRating().orElse(Double.POSITIVE_INFINITY));
    }

    /** Natural frequencies and shapes over the travel. */
    public GantryModes modes() {
        return GantryModes.of(model);
    }

    /** What the belts weigh in the motion. */
    public BeltMass belts() {
        return BeltMass.of(model);
    }

    /** Skew while nothing moves, bridge and carriage in the middle. */
    public RestSkew rest() {
        return RestSkew.at(
                model, gantry.bridge().travel().middle(), gantry.legs().travel().middle());
    }

    /** The least of all places by direction, beside the acceleration asked for. */
    public DirectionPlot plot(Map<Heading, LimitPoint> least) {
        return new DirectionPlot(
                new HeightPlot.Caption(
                        "Largest acceleration",
                        "by direction, at the place that allows least",
                        Shown.METRE_PER_SECOND_SQUARED),
                least.values().stream()
                        .map(
                                p ->
                                        new DirectionPlot.Spoke(
                                                p.heading().signed(),
                                                Math.atan2(p.heading().y(), p.heading().x()),
                                                p.acceleration(),
                                                p.setBy().words()))
                        .toList(),
                gantry.moves().acceleration());
    }

    /** The place with the least acceleration in each direction. */
    public static Map<Heading, LimitPoint> least(List<LimitPoint> points) {
        Map<Heading, LimitPoint> out = new EnumMap<>(Heading.class);
        for (LimitPoint p : points) {
            out.merge(p.heading(), p, LimitPoint::lesser);
        }
        return out;
    }
}
