// SPDX-License-Identifier: Apache-2.0

/**
 * Forces that are functions of pose, speed and time: laws along coordinates and loads at points.
 */
package foldwright.mechanics.force;
