// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Kind;

/** What is between motor or crank and the screws. */
@Kind("What is between motor or crank and the screws.")
public sealed interface Transmission permits Direct, BeltReduction {}
