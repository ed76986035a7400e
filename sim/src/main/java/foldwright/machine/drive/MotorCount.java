// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

/** How many motors. */
public enum MotorCount {
    /** One turns all screws. */
    ONE_FOR_ALL,
    /** Each screw has its own. */
    ONE_PER_SCREW
}
