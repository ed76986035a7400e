// SPDX-License-Identifier: Apache-2.0

/**
 * Constraint rows between bodies: lower-pair joints, scalar coordinates (angle, travel, distance,
 * combinations), prescribed motion, one-sided stops and friction rows. Every row block writes its
 * values and its Jacobian straight into arrays of the solver.
 */
package foldwright.mechanics.joint;
