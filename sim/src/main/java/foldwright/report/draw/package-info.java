// SPDX-License-Identifier: Apache-2.0

/**
 * A flat drawing surface and what is drawn with: paths, pens, fills, measured text, the marks of a
 * verdict. Plots draw on {@link foldwright.report.draw.Surface} only, so that they look alike as
 * vector graphics in a report and on a screen. Lengths are in units of the surface, x to the right,
 * y down; colours come from one {@link foldwright.report.draw.Palette}.
 */
package foldwright.report.draw;
