// SPDX-License-Identifier: Apache-2.0

/**
 * What opens the lift: screws, transmission, motor or crank, and the speed asked for. Records only;
 * no physics.
 */
package foldwright.machine.drive;
