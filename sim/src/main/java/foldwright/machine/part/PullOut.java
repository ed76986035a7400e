// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Kind;

/** Pull-out torque of a stepping motor over speed. */
@Kind("Pull-out torque of a stepping motor over speed.")
public sealed interface PullOut permits PullOutPoints, Winding {}
