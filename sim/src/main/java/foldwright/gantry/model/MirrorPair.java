// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/**
 * Two sections that are each other's mirror image across the middle line of the machine. What is
 * even in x is the same for both and what is odd differs in its sign, so that half the work serves
 * two, and a mirrored motion gives the same digits: sums over a pair are sum and difference.
 */
final class MirrorPair {
    final BeltSpring right;
    final BeltSpring left;
    MirrorPair next;

    /** Sum and difference of the tensions at the last evaluation [N]. */
    double sum;

    double difference;

    MirrorPair(BeltSpring right, BeltSpring left) {
        this.right = right;
        this.left = left;
    }

    /** Sets both tensions for a place. */
    void pull(DampedPlace d) {
        BeltSpring r = right;
        BeltSpring l = left;
        double even = r.even(d);
        double odd = r.odd(d);
        double length = fma(r.lengthY, d.y, r.length0);
        double longer = r.lengthX * d.s;
        double a = r.tighten(even + odd, length + longer);
        double b = l.tighten(even - odd, length - longer);
        sum = a + b;
        difference = a - b;
    }
}
