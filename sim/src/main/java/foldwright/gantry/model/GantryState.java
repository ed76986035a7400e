// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Pose;
import java.util.ArrayList;
import java.util.List;

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
        double bx = k.xb - m.bridge().centreX() + m.bridge().centreY() * k.th;
        double by = k.yb - m.bridge().centreY() - m.bridge().centreX() * k.th;
        double cx = k.xc - m.carriage().centreX() + m.carriage().centreY() * k.tc;
        double cy = k.yc - m.carriage().centreY() - m.carriage().centreX() * k.tc;
        return new GantryState(
                new Pose(bx, by, k.th, cx, cy, k.tc),
                k.th,
                k.th * m.span(),
                ErrorSplit.of(k, x, y),
                list(k.tension, k.belts.count),
                list(k.angle, k.axles.count),
                list(k.motorTorque, k.axles.motors),
                k.guideMoment,
                BlockLoads.of(k));
    }

    private static List<Double> list(double[] values, int count) {
        List<Double> list = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            list.add(values[i]);
        }
        return list;
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
