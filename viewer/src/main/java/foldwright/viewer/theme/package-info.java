// SPDX-License-Identifier: Apache-2.0

/**
 * Colours by role, light and dark, from the palette file; loads and signed values as colour scales.
 */
package foldwright.viewer.theme;
