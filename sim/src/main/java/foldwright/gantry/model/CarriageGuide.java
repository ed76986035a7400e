// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * How the carriage runs on the bridge. Its blocks act together as one lateral and one yaw spring;
 * the play of both is taken as independent.
 *
 * @param blocks number of blocks on the bridge rail
 * @param spacing of the outer blocks, 0 for one [m]
 * @param lateralStiffness of all blocks together [N/m]
 * @param lateralPlay free way to each side [m]
 * @param yawStiffness of all blocks together, spacing included [N m/rad]
 * @param yawPlay free yaw to each side [rad]
 * @param friction of all blocks, seals included [N]
 * @param frictionCoefficient friction a newton of side load, 0 for balls [1]
 */
public record CarriageGuide(
        int blocks,
        double spacing,
        double lateralStiffness,
        double lateralPlay,
        double yawStiffness,
        double yawPlay,
        double friction,
        double frictionCoefficient) {
    public CarriageGuide {
        Checks.positive("blocks", blocks);
        Checks.notNegative("spacing", spacing);
        Checks.positive("lateral stiffness of the carriage", lateralStiffness);
        Checks.notNegative("lateral play of the carriage", lateralPlay);
        Checks.positive("yaw stiffness of the carriage", yawStiffness);
        Checks.notNegative("yaw play of the carriage", yawPlay);
        Checks.notNegative("friction of the carriage", friction);
        Checks.notNegative("friction coefficient of the carriage", frictionCoefficient);
    }

    /** The same guide without friction. */
    public CarriageGuide frictionless() {
        return new CarriageGuide(
                blocks, spacing, lateralStiffness, lateralPlay, yawStiffness, yawPlay, 0, 0);
    }

    /** The same guide with all play taken out. */
    public CarriageGuide closed() {
        return new CarriageGuide(
                blocks,
                spacing,
                lateralStiffness,
                0,
                yawStiffness,
                0,
                friction,
                frictionCoefficient);
    }
}
