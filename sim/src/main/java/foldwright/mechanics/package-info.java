// SPDX-License-Identifier: Apache-2.0

/**
 * Bodies, joints, force elements and the one fixed-step solver. Usable by itself; knows no machine.
 */
package foldwright.mechanics;
