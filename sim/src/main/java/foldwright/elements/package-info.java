// SPDX-License-Identifier: Apache-2.0

/**
 * Laws of machine parts: threads, springs, bearings, motors, rails, belts, columns, beams, and the
 * tables they stand on. Pure functions in SI units; no machine, no state.
 */
package foldwright.elements;
