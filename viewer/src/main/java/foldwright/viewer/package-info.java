// SPDX-License-Identifier: Apache-2.0

/** The 3D viewer: one renderer for a window, stills and films. */
package foldwright.viewer;
