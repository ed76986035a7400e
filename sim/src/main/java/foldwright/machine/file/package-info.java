// SPDX-License-Identifier: Apache-2.0

/**
 * Machine files: reading with all problems at once, changing a value in the text, the JSON Schema
 * and the table of keys. {@link foldwright.machine.file.MachineFile} is the way in.
 */
package foldwright.machine.file;
