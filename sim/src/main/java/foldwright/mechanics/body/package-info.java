// SPDX-License-Identifier: Apache-2.0

/**
 * What moves: vectors, rotations, poses, mass properties, bodies, and the state (pose, velocity,
 * acceleration) of all bodies at one instant. Knows no joint, no force and no solver.
 */
package foldwright.mechanics.body;
