// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Kind;

/** What turns the screws. */
@Kind("What turns the screws.")
public sealed interface DriveSource permits StepperDrive, HandCrank {}
