// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/**
 * A stretch of belt that carries one tension: between two anchors or wheels that can take a torque.
 * All wheels between them pass the tension on.
 *
 * @param name for people, "first to last"
 * @param belt index of the belt
 * @param firstSpan first strand of the belt in it
 * @param spanCount number of strands, in list order and around the end of a closed list
 * @param startAxle axle of the wheel it starts at; -1 for an anchor
 * @param startArm change of the section's extension with that axle's absolute angle [m/rad]
 * @param endAxle axle of the wheel it ends at; -1 for an anchor
 * @param endArm as {@code startArm} [m/rad]
 */
public record Section(
        String name,
        int belt,
        int firstSpan,
        int spanCount,
        int startAxle,
        double startArm,
        int endAxle,
        double endArm) {}
