// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Carrier;
import foldwright.gantry.route.CrossShaft;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Wheel;
import java.util.List;

/** Motors, shafts and idlers as flat arrays over the axles, with one spare entry at the end. */
final class AxleArrays {
    /** Mass at the pitch radius given to an axle that states no inertia, so that it steps [kg]. */
    private static final double LEAST_MASS = 0.005;

    /** Stiffness of a sticking bearing a unit of inertia: a stick frequency of 1500 rad/s. */
    private static final double STICK = 1500.0 * 1500.0;

    final int count;
    final double[] inertia;
    final double[] perInertia;
    final double[] drag;
    final double[] stick;
    final int motors;
    final int[] motorAxle;
    final double[] poles;
    final double[] motorDamping;
    final double[] microstep;
    final int[] motorBody;
    final TorqueCurve[] curve;
    final int shafts;
    final int[] shaftFirst;
    final int[] shaftSecond;
    final double[] shaftStiffness;

    AxleArrays(BeltSystem system, GantryModel model, BeltArrays belts) {
        count = system.axleNames().size();
        inertia = new double[count + 1];
        perInertia = new double[count + 1];
        drag = new double[count + 1];
        stick = new double[count + 1];
        addWheels(system, model);
        motors = model.motors().size();
        motorAxle = new int[motors];
        poles = new double[motors];
        motorDamping = new double[motors];
        microstep = new double[motors];
        motorBody = new int[motors];
        curve = new TorqueCurve[motors];
        for (int m = 0; m < motors; m++) {
            AxisMotor motor = model.motors().get(m);
            motorAxle[m] = system.axle(motor.axle());
            poles[m] = motor.rotorTeeth();
            motorDamping[m] = motor.damping();
            microstep[m] = motor.microstep();
            motorBody[m] =
                    motor.body() == Carrier.BASE ? -1 : motor.body() == Carrier.BRIDGE ? 2 : 5;
            curve[m] = motor.curve();
            inertia[motorAxle[m]] += motor.rotorInertia();
            drag[motorAxle[m]] += motor.drag();
        }
        List<CrossShaft> elastic =
                model.layout().shafts().stream()
                        .filter(s -> !Double.isInfinite(s.stiffness()))
                        .toList();
        shafts = elastic.size();
        shaftFirst = elastic.stream().mapToInt(s -> system.axle(s.first())).toArray();
        shaftSecond = elastic.stream().mapToInt(s -> system.axle(s.second())).toArray();
        shaftStiffness = elastic.stream().mapToDouble(CrossShaft::stiffness).toArray();
        for (int i = 0; i < count; i++) {
            if (inertia[i] == 0) {
                inertia[i] = LEAST_MASS * arm(belts, i) * arm(belts, i);
            }
            stick[i] = STICK * inertia[i];
            perInertia[i] = 1 / inertia[i];
        }
        inertia[count] = 1;
    }

    private static double arm(BeltArrays belts, int axle) {
        for (int s = 0; s < belts.count; s++) {
            if (belts.startAxle[s] == axle) {
                return Math.abs(belts.startArm[s]);
            }
            if (belts.endAxle[s] == axle) {
                return Math.abs(belts.endArm[s]);
            }
        }
        return 0.01;
    }

    private void addWheels(BeltSystem system, GantryModel model) {
        for (Belt belt : model.layout().belts()) {
            for (RoutePoint point : belt.points()) {
                if (point instanceof Wheel wheel && system.axle(wheel) >= 0) {
                    inertia[system.axle(wheel)] += wheel.inertia();
                    drag[system.axle(wheel)] += wheel.drag();
                }
            }
        }
    }
}
