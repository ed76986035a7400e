// SPDX-License-Identifier: Apache-2.0

/**
 * Pins and their bearings: life and static safety of ball bearings, Hertz contact of balls and
 * grooves and what it gives in stiffness, preload, friction, and plain pin joints.
 */
package foldwright.elements.bearing;
