// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

/** What can set the largest acceleration. */
public enum Criterion {
    SKEW("skew end to end"),
    TOOL_ERROR("tool error"),
    BELT_TENSION("slackest belt"),
    TOOTH_HOLD("hold of the belt teeth"),
    MOTOR_TORQUE("motor torque"),
    LEG_BLOCK_MOMENT("yaw moment of a leg block"),
    LEG_BLOCK_FORCE("side force of a leg block"),
    CARRIAGE_BLOCK_MOMENT("yaw moment of a carriage block"),
    CARRIAGE_BLOCK_FORCE("side force of a carriage block");

    private final String words;

    Criterion(String words) {
        this.words = words;
    }

    /** What people call it. */
    public String words() {
        return words;
    }
}
