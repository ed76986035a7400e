// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Anchor;
import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.Carrier;
import foldwright.gantry.route.CrossShaft;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Sense;
import foldwright.gantry.route.Travel;
import foldwright.gantry.route.Wheel;
import foldwright.machine.gantry.BeltAnchor;
import foldwright.machine.gantry.BeltRoute;
import foldwright.machine.gantry.Bridge;
import foldwright.machine.gantry.Carriage;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.GantryMotor;
import foldwright.machine.gantry.RouteBody;
import foldwright.machine.gantry.RouteItem;
import foldwright.machine.gantry.ToothedWheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The moving model of the gantry a machine file describes.
 *
 * <p>Where the file is silent: the bridge is an even bar as long as its span; the carriage has the
 * yaw inertia of a body with a radius of gyration of half its block spacing, half the ball length
 * of one block, or 15 mm, whichever is largest; belts and guides damp as {@link Damping#USUAL}.
 */
public final class GantryAssembly {
    private static final double LEAST_GYRATION = 0.015;

    private GantryAssembly() {}

    /** Builds the model; free idlers ride on carriage and bridge. */
    public static GantryModel of(Gantry gantry) {
        return new GantryModel(
                layout(gantry),
                IdlerModel.LUMPED,
                bridge(gantry),
                carriage(gantry),
                new ToolPoint(
                        gantry.carriage().toolPoint().x(),
                        gantry.carriage().toolPoint().y(),
                        gantry.carriage().toolPoint().z()),
                GuideAssembly.bridge(gantry.legs()),
                GuideAssembly.carriage(gantry.bridge().guide()),
                beam(gantry.bridge()),
                gantry.motors().stream().map(MotorAssembly::motor).toList(),
                Damping.USUAL);
    }

    /** Belts, axles and travel alone, to check a route before anything is built on it. */
    public static BeltLayout layout(Gantry gantry) {
        List<CrossShaft> shafts = new ArrayList<>();
        for (GantryMotor motor : gantry.motors()) {
            motor.crossShaft()
                    .ifPresent(
                            s -> shafts.add(new CrossShaft(motor.name(), s.name(), s.stiffness())));
        }
        return new BeltLayout(
                "belts",
                gantry.belts().stream().map(route -> belt(route, gantry)).toList(),
                gantry.motors().stream().map(GantryMotor::name).toList(),
                shafts,
                new Travel(
                        gantry.bridge().travel().low(),
                        gantry.bridge().travel().high(),
                        gantry.legs().travel().low(),
                        gantry.legs().travel().high()));
    }

    private static Belt belt(BeltRoute route, Gantry gantry) {
        List<RoutePoint> points = new ArrayList<>();
        for (RouteItem item : route.route()) {
            points.add(point(item, route, gantry));
        }
        return new Belt(
                route.name(),
                points,
                route.belt().pitch(),
                route.belt().width(),
                route.belt().stiffness(),
                route.belt().massPerLength(),
                route.pretension(),
                route.height());
    }

    private static RoutePoint point(RouteItem item, BeltRoute route, Gantry gantry) {
        Carrier carrier = carrier(item.on());
        if (item instanceof BeltAnchor) {
            return new Anchor(item.name(), carrier, item.at().x(), item.at().y());
        }
        var wheel = (foldwright.machine.gantry.Wheel) item;
        Optional<String> axle =
                wheel instanceof ToothedWheel toothed ? toothed.turnedBy() : Optional.empty();
        double shaft = axle.map(name -> shaftInertia(name, gantry)).orElse(0.0);
        return new Wheel(
                wheel.name(),
                carrier,
                wheel.at().x(),
                wheel.at().y(),
                wheel.pitchRadius(route.belt()),
                wheel.sense() == foldwright.machine.gantry.Sense.CLOCKWISE
                        ? Sense.CLOCKWISE
                        : Sense.COUNTER_CLOCKWISE,
                wheel instanceof ToothedWheel ? Wheel.Surface.TOOTHED : Wheel.Surface.PLAIN,
                axle,
                wheel.spin().map(s -> s.inertia()).orElse(0.0) + shaft,
                wheel.spin().map(s -> s.drag()).orElse(0.0));
    }

    /** Half of a cross shaft turns with its far end. */
    private static double shaftInertia(String axle, Gantry gantry) {
        return gantry.motors().stream()
                .flatMap(m -> m.crossShaft().stream())
                .filter(s -> s.name().equals(axle))
                .mapToDouble(s -> s.inertia() / 2)
                .sum();
    }

    static Carrier carrier(RouteBody body) {
        return switch (body) {
            case FRAME -> Carrier.BASE;
            case BRIDGE -> Carrier.BRIDGE;
            case CARRIAGE -> Carrier.CARRIAGE;
        };
    }

    private static BodyMass bridge(Gantry gantry) {
        Bridge b = gantry.bridge();
        double span = gantry.legs().span();
        return new BodyMass(
                b.mass(),
                b.yawInertia().orElse(b.mass() * span * span / 12),
                b.massCentre().x(),
                b.massCentre().y(),
                0);
    }

    private static BodyMass carriage(Gantry gantry) {
        Carriage c = gantry.carriage();
        var guide = gantry.bridge().guide();
        double gyration =
                Math.max(LEAST_GYRATION, Math.max(guide.spacing(), guide.block().ballLength()) / 2);
        return new BodyMass(
                c.mass(),
                c.yawInertia().orElse(c.mass() * gyration * gyration),
                c.massCentre().x(),
                c.massCentre().y(),
                c.massCentre().z());
    }

    /** E times the section's moment about the vertical; infinite where no section is given. */
    private static double beam(Bridge bridge) {
        if (bridge.section().isEmpty() || bridge.material().isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        return bridge.material().get().youngsModulus() * bridge.section().get().acrossMoment();
    }
}
