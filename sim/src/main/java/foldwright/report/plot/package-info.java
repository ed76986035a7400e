// SPDX-License-Identifier: Apache-2.0

/**
 * Plots: data of {@code foldwright.study} drawn on a {@link foldwright.report.draw.Surface}. Height
 * stands upright in every plot that has it; limits carry ticks on their forbidden side; a verdict
 * is always shape and texture as well as colour.
 */
package foldwright.report.plot;
