// SPDX-License-Identifier: Apache-2.0

/**
 * Lines, areas, textures and text of the flat sheet, drawn over the machine. Pixels, x right, y
 * down.
 */
package foldwright.viewer.paint;
