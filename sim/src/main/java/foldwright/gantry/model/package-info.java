// SPDX-License-Identifier: Apache-2.0

/**
 * The moving gantry: bridge, carriage and rotors as an explicit kernel with a diagonal mass and
 * continuous piecewise linear forces, its statics, modes, error split and energy ledger. Entry:
 * {@link foldwright.gantry.model.GantryModel} describes, {@link
 * foldwright.gantry.model.GantryKernel} steps. Reads no toolpath; {@code gantry.replay} does.
 */
package foldwright.gantry.model;
