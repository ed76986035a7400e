// SPDX-License-Identifier: Apache-2.0

/**
 * Runs in time: the clock that plays them ({@link foldwright.viewer.play.Player}), what is drawn of
 * them ({@link foldwright.viewer.play.Reel}), and the thread that computes them ({@link
 * foldwright.viewer.play.RunMaker}). No graphics calls here.
 */
package foldwright.viewer.play;
