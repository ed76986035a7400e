// SPDX-License-Identifier: Apache-2.0

/**
 * Parts and numbers that several sections of a machine share: places, materials, sections, motors.
 * Records only; no physics.
 */
package foldwright.machine.part;
