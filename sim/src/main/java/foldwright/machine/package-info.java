// SPDX-License-Identifier: Apache-2.0

/**
 * The description of a machine as its file states it: records, the JSON reader and writer,
 * validation. Knows no physics.
 */
package foldwright.machine;
