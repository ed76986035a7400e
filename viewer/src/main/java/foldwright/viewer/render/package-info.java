// SPDX-License-Identifier: Apache-2.0

/**
 * Draws the machine: shadow map, contact shadow on the table, shaded and inked solids, edge lines.
 * The 2D sheet is drawn over its result by another package.
 */
package foldwright.viewer.render;
