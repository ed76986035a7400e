// SPDX-License-Identifier: Apache-2.0

/**
 * The sheet round the machine: title, ink legend, height scale with margin ribbon and tab, plot,
 * six question cards, rules with hills, notes on the table. {@link
 * foldwright.viewer.sheet.SheetModel} says what stands on it, {@link
 * foldwright.viewer.sheet.Layout} where, {@link foldwright.viewer.sheet.SheetPainter} draws it.
 * Nothing here computes.
 */
package foldwright.viewer.sheet;
