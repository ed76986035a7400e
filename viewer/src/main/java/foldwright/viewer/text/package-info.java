// SPDX-License-Identifier: Apache-2.0

/**
 * Letters: faces and their metrics without any graphics ({@link foldwright.viewer.text.Fonts}),
 * glyph pictures at quarter-pixel steps, and one draw call for all text of a frame. Who lays out
 * and who draws use the same metrics, and every text drawn is recorded as a {@link
 * foldwright.viewer.text.TextBox}, so that overlaps can be tested.
 */
package foldwright.viewer.text;
