// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import foldwright.quantity.Dimension;
import foldwright.quantity.Unit;
import foldwright.quantity.Units;

/** One quantity of a run over time. Places of the gantry are in its frame. */
public enum RunColumn {
    /** Since the command began. */
    TIME("time", Dimension.TIME, "s", In.BOTH),
    /** Pivot height at the middle of the deck. */
    HEIGHT("height", Dimension.LENGTH, "mm", In.LIFT),
    /** Speed of the deck, upward. */
    DECK_SPEED("deck speed", Dimension.SPEED, "mm/s", In.LIFT),
    /** Angle of the motor's field, at its shaft. */
    COMMANDED_ANGLE("commanded angle", Dimension.ANGLE, "rev", In.LIFT),
    /** Angle of the motor's rotor. */
    MOTOR_ANGLE("motor angle", Dimension.ANGLE, "rev", In.LIFT),
    /** Speed of the rotor. */
    MOTOR_SPEED("motor speed", Dimension.ROTATION_SPEED, "rev/s", In.LIFT),
    /** Torque the field gives the rotor. */
    MOTOR_TORQUE("motor torque", Dimension.TORQUE, "N·m", In.BOTH),
    /** Torque at which the motor falls out at this speed. */
    PULL_OUT("pull-out torque", Dimension.TORQUE, "N·m", In.LIFT),
    /** Full steps lost so far. */
    STEPS_LOST("steps lost", Dimension.RATIO, "1", In.BOTH),
    /** Axial force on the most loaded nut, positive when the screw pushes the lift up. */
    NUT_FORCE("nut force", Dimension.FORCE, "N", In.LIFT),
    /** Left side above right side. */
    DROOP("droop", Dimension.LENGTH, "mm", In.LIFT),
    /** Line of the toolpath, 0 where there is none. */
    LINE("line", Dimension.RATIO, "1", In.GANTRY),
    /** Commanded place of the carriage along the bridge. */
    COMMANDED_X("commanded x", Dimension.LENGTH, "mm", In.GANTRY),
    /** Commanded place of the bridge along the rails. */
    COMMANDED_Y("commanded y", Dimension.LENGTH, "mm", In.GANTRY),
    /** Place of the carriage on the bridge. */
    CARRIAGE("carriage", Dimension.LENGTH, "mm", In.GANTRY),
    /** Place of the bridge at its middle. */
    BRIDGE("bridge", Dimension.LENGTH, "mm", In.GANTRY),
    /** Yaw of the bridge. */
    SKEW("skew", Dimension.ANGLE, "mrad", In.GANTRY),
    /** Tool beside its command, along the bridge. */
    ERROR_X("tool error x", Dimension.LENGTH, "mm", In.GANTRY),
    /** Tool beside its command, along the rails. */
    ERROR_Y("tool error y", Dimension.LENGTH, "mm", In.GANTRY),
    /** Smallest tension of any section of belt. */
    SLACKEST("slackest belt", Dimension.FORCE, "N", In.GANTRY),
    /** Largest tension of any section of belt. */
    TIGHTEST("tightest belt", Dimension.FORCE, "N", In.GANTRY);

    private enum In {
        LIFT,
        GANTRY,
        BOTH
    }

    private final String title;
    private final Dimension dimension;
    private final Unit unit;
    private final In in;

    RunColumn(String title, Dimension dimension, String unit, In in) {
        this.title = title;
        this.dimension = dimension;
        this.unit = Units.of(unit);
        this.in = in;
    }

    /** Its name in a file, without the unit. */
    public String title() {
        return title;
    }

    Dimension dimension() {
        return dimension;
    }

    /** The unit it is written in. */
    Unit unit() {
        return unit;
    }

    boolean in(boolean replay) {
        return in == In.BOTH || (in == In.GANTRY) == replay;
    }
}
