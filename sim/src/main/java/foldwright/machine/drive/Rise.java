// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Kind;

/** How fast the lift is asked to rise. */
@Kind(value = "How fast the lift is asked to rise.", orElse = "steady")
public sealed interface Rise permits SteadyRise, SteadyTurning, RiseProfile {}
