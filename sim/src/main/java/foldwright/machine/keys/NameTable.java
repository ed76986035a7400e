// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

/** A table whose names a text must be one of. */
public enum NameTable {
    /** No table: any text. */
    NONE,
    /** Grades of spring wire. */
    WIRE_GRADES
}
