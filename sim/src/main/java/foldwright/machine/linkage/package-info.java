// SPDX-License-Identifier: Apache-2.0

/**
 * The scissor linkage: arms, pins, slider ends, travel, stops, and points on them. Records only; no
 * physics.
 */
package foldwright.machine.linkage;
