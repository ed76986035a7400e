// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Two sections that are each other's mirror image across the middle line of the machine. What is
 * even in x is the same for both and what is odd differs in its sign, so that half the work serves
 * two, and a mirrored motion gives the same digits: sums over a pair are sum and difference.
 */
final class MirrorPair {
    final BeltSpring right;
    final BeltSpring left;
    MirrorPair next;

    MirrorPair(BeltSpring right, BeltSpring left) {
        this.right = right;
        this.left = left;
    }
}
