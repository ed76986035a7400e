// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.rail;

/**
 * Load on one block.
 *
 * @param vertical force square to the rail foot [N]
 * @param lateral force across the rail [N]
 * @param roll moment about the rail, M_x [N·m]
 * @param pitch moment about the lateral axis, M_y [N·m]
 * @param yaw moment about the vertical axis, M_z [N·m]
 */
public record BlockLoad(double vertical, double lateral, double roll, double pitch, double yaw) {}
