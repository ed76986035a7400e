// SPDX-License-Identifier: Apache-2.0

/**
 * The command {@code watch}: the window, and stills, films and animated models without a display.
 */
package foldwright.viewer.watch;
