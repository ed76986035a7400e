// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Kind;

/**
 * How far the lift is open: an arm angle above horizontal or a height of the deck pins above the
 * base pins, written as one text.
 */
@Kind(
        "How far the lift is open: an arm angle above horizontal or a height of the deck pins above the base pins, written as one text.")
public sealed interface Opening permits ArmAngle, PinHeight {}
