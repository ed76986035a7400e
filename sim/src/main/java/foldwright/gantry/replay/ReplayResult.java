// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.Stability;
import java.util.List;

/**
 * Summary of a replay.
 *
 * @param duration of the course [s]
 * @param steps taken
 * @param stability the step used and why
 * @param skew end to end of the bridge [m]
 * @param errorX tool beside its command along the bridge [m]
 * @param errorY along the rails [m]
 * @param error size of both [m]
 * @param worstSkew the machine when the skew was largest
 * @param worstError the machine when the tool error was largest
 * @param leastTension of any section at any time [N]
 * @param mostTension [N]
 * @param motors largest torques, by motor [N m]
 * @param guideMoment largest yaw moment of the leg rails [N m]
 * @param carriageForce largest side force of the carriage blocks together [N]
 * @param carriageMoment largest yaw moment of the carriage blocks together [N m]
 * @param events slack belts, climbing teeth, lost steps
 * @param map tool error over the travel
 */
public record ReplayResult(
        double duration,
        long steps,
        Stability stability,
        ChannelResult skew,
        ChannelResult errorX,
        ChannelResult errorY,
        ChannelResult error,
        GantryState worstSkew,
        GantryState worstError,
        double leastTension,
        double mostTension,
        List<Double> motors,
        double guideMoment,
        double carriageForce,
        double carriageMoment,
        ReplayEvents events,
        ErrorMap map) {
    public ReplayResult {
        motors = List.copyOf(motors);
    }
}
