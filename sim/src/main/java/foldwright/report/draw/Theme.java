// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

/** The three grounds on which everything is drawn. */
public enum Theme {
    LIGHT,
    DARK,
    /** The light colours on white. */
    PRINT
}
