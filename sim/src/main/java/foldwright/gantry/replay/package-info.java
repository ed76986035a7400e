// SPDX-License-Identifier: Apache-2.0

/**
 * Replay of a toolpath on a moving gantry, with statistics in bounded memory. Entry: {@link
 * foldwright.gantry.replay.Replay}. Called by study and the command line.
 */
package foldwright.gantry.replay;
