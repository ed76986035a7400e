// SPDX-License-Identifier: Apache-2.0

/**
 * Miniature profile rails: life, static safety, stiffness in yaw, play and drag of their blocks.
 */
package foldwright.elements.rail;
