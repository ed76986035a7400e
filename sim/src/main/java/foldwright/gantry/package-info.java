// SPDX-License-Identifier: Apache-2.0

/** Belt routes as data, the moving bridge and carriage, and the replay of moves. */
package foldwright.gantry;
