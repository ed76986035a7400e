// SPDX-License-Identifier: Apache-2.0

/**
 * How a key of the machine file is described: once, on the record component of the same name. From
 * here come range checks ({@link foldwright.machine.keys.Keys#check}), reading, schema and
 * documentation.
 */
package foldwright.machine.keys;
