// SPDX-License-Identifier: Apache-2.0

/**
 * The description of a machine as its file states it: records, reading, checks and writing. Knows
 * no physics.
 *
 * <p>{@link foldwright.machine.Machine} is the root. Every number in it is SI. Sub-packages hold
 * its sections: {@code linkage}, {@code drive}, {@code spring}, {@code gantry}, and {@code part}
 * for what several of them share; {@code keys} describes the keys of the file.
 */
package foldwright.machine;
