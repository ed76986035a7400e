// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

/** Patterns that stand for a verdict or a limit where colour alone would not do. */
public enum Texture {
    /** 45 degree stripes: fails. */
    STRIPES,
    /** Dots: tight. */
    DOTS,
    /** Thin 45 degree lines: beyond a limit. */
    HATCH
}
