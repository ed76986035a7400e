// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

import foldwright.elements.Domain;
import java.util.List;

/**
 * Pull-out torque from measured or printed points, joined by straight lines.
 *
 * <p>Below the first speed its torque holds. Beyond the last speed nothing is known and the torque
 * is zero: a curve is never prolonged.
 */
public final class MeasuredPullOut implements PullOut {
    private final double[] speeds;
    private final double[] torques;

    /**
     * One point of the curve.
     *
     * @param speed shaft speed [rad/s]
     * @param torque pull-out torque [N·m]
     */
    public record Point(double speed, double torque) {
        public Point {
            Domain.notNegative("pull-out speed", speed, "rad/s");
            Domain.notNegative("pull-out torque", torque, "N·m");
        }
    }

    /**
     * Curve through the points.
     *
     * @param points at least one, with growing speed
     * @throws IllegalArgumentException if empty or not growing
     */
    public MeasuredPullOut(List<Point> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("pull-out curve has 0 points, allowed: at least 1");
        }
        speeds = points.stream().mapToDouble(Point::speed).toArray();
        torques = points.stream().mapToDouble(Point::torque).toArray();
        for (int i = 1; i < speeds.length; i++) {
            if (!(speeds[i] > speeds[i - 1])) {
                throw new IllegalArgumentException(
                        "pull-out point "
                                + (i + 1)
                                + " has speed "
                                + speeds[i]
                                + " rad/s, allowed: above that of the point before, "
                                + speeds[i - 1]);
            }
        }
    }

    @Override
    public double torque(double speed) {
        double w = Math.abs(speed);
        int last = speeds.length - 1;
        if (w <= speeds[0]) {
            return torques[0];
        }
        if (w > speeds[last]) {
            return 0;
        }
        int i = 1;
        while (speeds[i] < w) {
            i++;
        }
        double share = (w - speeds[i - 1]) / (speeds[i] - speeds[i - 1]);
        return torques[i - 1] + share * (torques[i] - torques[i - 1]);
    }

    @Override
    public double fastest() {
        return speeds[speeds.length - 1];
    }
}
