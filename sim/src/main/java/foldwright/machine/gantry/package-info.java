// SPDX-License-Identifier: Apache-2.0

/** The gantry: rails, bridge, carriage, and belts whose route is data. Records only; no physics. */
package foldwright.machine.gantry;
