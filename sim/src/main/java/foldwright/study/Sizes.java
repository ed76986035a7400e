// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** Which of two sizes is the larger, when both came out of long sums. */
final class Sizes {
    /** Sizes that differ by less are the same to rounding: the first of them is named. */
    private static final double SAME = 1 + 1e-9;

    private Sizes() {}

    /** Whether a size is larger than one that came before it, by more than rounding. */
    static boolean larger(double size, double before) {
        return size > SAME * before;
    }
}
