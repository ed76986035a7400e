// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Pose;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * One instant of a gantry, for reports and pictures.
 *
 * @param pose of bridge and carriage, by their origins
 * @param skew yaw of the bridge [rad]
 * @param endToEnd skew times the span between the rails [m]
 * @param error of the tool by cause
 * @param tensions of the sections, in the order of {@code BeltSystem.sections()} [N]
 * @param axleAngles absolute, in the order of {@code BeltSystem.axleNames()} [rad]
 * @param motorTorques of the fields on the rotors [N m]
 * @param guideMoment yaw moment of the leg rails on the bridge [N m]
 * @param blocks loads of the blocks
 */
public record GantryState(
        Pose pose,
        double skew,
        double endToEnd,
        ErrorSplit error,
        List<Double> tensions,
        List<Double> axleAngles,
        List<Double> motorTorques,
        double guideMoment,
        BlockLoads blocks) {
    public GantryState {
        tensions = List.copyOf(tensions);
        axleAngles = List.copyOf(axleAngles);
        motorTorques = List.copyOf(motorTorques);
    }

    /**
     * Reads a kernel after an evaluation.
     *
     * @param x commanded place of the carriage origin along the bridge [m]
     * @param y commanded place of the bridge [m]
     */
    public static GantryState of(GantryKernel k, double x, double y) {
        GantryModel m = k.model;
        double bx = k.bridge.x + k.obx - k.oby * k.bridge.yaw;
        double by = k.bridge.y + k.oby + k.obx * k.bridge.yaw;
        double cx = k.carriage.x + k.ocx - k.ocy * k.carriage.yaw;
        double cy = k.carriage.y + k.ocy + k.ocx * k.carriage.yaw;
        return new GantryState(
                new Pose(bx, by, k.bridge.yaw, cx, cy, k.carriage.yaw),
                k.bridge.yaw,
                k.bridge.yaw * m.span(),
                ErrorSplit.of(k, x, y),
                list(k.sections(), k::tension),
                list(k.axles.rotors.length, i -> k.axles.rotors[i].angle),
                list(k.motors(), k::motorTorque),
                k.guideMoment(),
                BlockLoads.of(k));
    }

    private static List<Double> list(int count, IntToDoubleFunction value) {
        return IntStream.range(0, count).mapToDouble(value).boxed().toList();
    }

    /** Smallest tension of all sections [N]. */
    public double slackest() {
        return tensions.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    /** Largest torque of all motors, by size [N m]. */
    public double hardestMotor() {
        return motorTorques.stream().mapToDouble(Math::abs).max().orElse(0);
    }
}
