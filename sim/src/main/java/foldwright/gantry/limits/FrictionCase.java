// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

/** Which friction acts while the gantry accelerates. */
public enum FrictionCase {
    /** None: the plain sum by hand. */
    NONE,
    /**
     * That of the carriage and of both rails, against a motion in the direction of acceleration,
     * the rails alike: it loads belts and motors, and the carriage's share twists the bridge.
     */
    AGAINST_MOTION
}
