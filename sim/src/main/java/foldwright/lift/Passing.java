// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What the screws carry while the deck passes a height: enough to know the motor's margin for any
 * thread friction and reduction.
 *
 * @param height pivot height [m]
 * @param along force of each screw on its nut along the nut's motion [N]
 * @param nutSpeed of the fastest nut, positive [m/s]
 * @param nutAcceleration along the motion, for a steady deck [m/s²]
 */
record Passing(double height, double[] along, double nutSpeed, double nutAcceleration) {

    /** Available over needed torque of the busiest motor [1]. */
    double margin(DriveTrain train) {
        double[] torque = new double[train.motors()];
        for (int i = 0; i < along.length; i++) {
            torque[train.motorOf(i)] += train.turn(along[i]).total();
        }
        double inertia = train.rotorInertia() * train.motorSpeed(nutAcceleration);
        double needed = 0;
        for (double t : torque) {
            needed = Math.max(needed, Math.abs(train.motorTorque(t) + inertia));
        }
        double speed = train.motorSpeed(nutSpeed);
        return new MotorLoad(needed, speed, train.available(speed)).margin();
    }
}
