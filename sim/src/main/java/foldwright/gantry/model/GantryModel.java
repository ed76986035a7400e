// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.IdlerModel;
import java.util.List;
import java.util.Objects;

/**
 * Everything the moving gantry needs to know about itself. One component a part of the machine,
 * hence more of them than a constructor should otherwise have.
 *
 * @param layout belts, axles, shafts and travel
 * @param idlers how free idlers enter
 * @param bridge mass of the bridge with all it carries except the carriage
 * @param carriage mass of the carriage with the tool
 * @param tool where the tool works
 * @param bridgeGuide leg rails and their blocks
 * @param carriageGuide bridge rail and its blocks
 * @param beam bending stiffness EI of the bridge in the plane of motion, infinite if rigid [N m2]
 * @param motors one for each driven axle of the layout, in that order
 * @param damping of belts and guides
 */
public record GantryModel(
        BeltLayout layout,
        IdlerModel idlers,
        BodyMass bridge,
        BodyMass carriage,
        ToolPoint tool,
        BridgeGuide bridgeGuide,
        CarriageGuide carriageGuide,
        double beam,
        List<AxisMotor> motors,
        Damping damping) {
    public GantryModel {
        Objects.requireNonNull(layout, "layout");
        Objects.requireNonNull(idlers, "idlers");
        Objects.requireNonNull(bridge, "bridge");
        Objects.requireNonNull(carriage, "carriage");
        Objects.requireNonNull(tool, "tool");
        Objects.requireNonNull(bridgeGuide, "bridge guide");
        Objects.requireNonNull(carriageGuide, "carriage guide");
        motors = List.copyOf(motors);
        Objects.requireNonNull(damping, "damping");
        Checks.positive("bending stiffness of the bridge", beam);
        List<String> axles = motors.stream().map(AxisMotor::axle).toList();
        if (!axles.equals(layout.drivenAxles())) {
            throw new IllegalArgumentException(
                    "motors drive axles "
                            + axles
                            + "; allowed: one for each driven axle of the layout, in its order: "
                            + layout.drivenAxles());
        }
    }

    /** Distance between the leg rails [m]. */
    public double span() {
        return 2 * bridgeGuide.halfSpan();
    }

    public GantryModel with(BeltLayout other) {
        return new GantryModel(
                other,
                idlers,
                bridge,
                carriage,
                tool,
                bridgeGuide,
                carriageGuide,
                beam,
                motors,
                damping);
    }

    public GantryModel with(IdlerModel other) {
        return new GantryModel(
                layout,
                other,
                bridge,
                carriage,
                tool,
                bridgeGuide,
                carriageGuide,
                beam,
                motors,
                damping);
    }

    public GantryModel with(BridgeGuide other) {
        return new GantryModel(
                layout,
                idlers,
                bridge,
                carriage,
                tool,
                other,
                carriageGuide,
                beam,
                motors,
                damping);
    }

    public GantryModel with(CarriageGuide other) {
        return new GantryModel(
                layout, idlers, bridge, carriage, tool, bridgeGuide, other, beam, motors, damping);
    }

    public GantryModel with(Damping other) {
        return new GantryModel(
                layout,
                idlers,
                bridge,
                carriage,
                tool,
                bridgeGuide,
                carriageGuide,
                beam,
                motors,
                other);
    }

    public GantryModel withCarriage(BodyMass other) {
        return new GantryModel(
                layout,
                idlers,
                bridge,
                other,
                tool,
                bridgeGuide,
                carriageGuide,
                beam,
                motors,
                damping);
    }

    public GantryModel withMotors(List<AxisMotor> other) {
        return new GantryModel(
                layout,
                idlers,
                bridge,
                carriage,
                tool,
                bridgeGuide,
                carriageGuide,
                beam,
                other,
                damping);
    }

    /** Without friction in rails, carriage, motors and idlers. */
    public GantryModel frictionless() {
        return with(layout.withBelts(FreeWheels::of))
                .with(bridgeGuide.frictionless())
                .with(carriageGuide.frictionless())
                .withMotors(motors.stream().map(AxisMotor::frictionless).toList());
    }

    /** With idlers that have neither inertia nor drag, as sums by hand take them. */
    public GantryModel weightlessIdlers() {
        return with(layout.withBelts(FreeWheels::weightless));
    }

    /** With belts that weigh nothing, as sums by hand take them. */
    public GantryModel weightlessBelts() {
        return with(layout.withBelts(belt -> belt.withLinearMass(0)));
    }

    /** Without play, in rails and carriage. */
    public GantryModel closed() {
        return with(bridgeGuide.closed()).with(carriageGuide.closed());
    }
}
