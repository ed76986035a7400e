// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Kind;

/** A point on a part of the lift. */
@Kind(value = "A point on a part of the lift.", key = "on")
public sealed interface Anchor permits OnBase, OnDeck, OnSlider, OnArm {}
