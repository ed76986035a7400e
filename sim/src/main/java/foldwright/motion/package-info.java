// SPDX-License-Identifier: Apache-2.0

/**
 * Toolpaths (an ISO 6983 subset, timed points, probe moves) and their time profiles. Knows no
 * machine.
 */
package foldwright.motion;
