// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Two sections summed in one go, or one alone. Where two sections are mirror images of each other
 * they make a pair, so that a mirrored motion gives the same digits: a sum of two does not depend
 * on their order, a sum of three does.
 */
final class BeltPair {
    final BeltSpring first;

    /** The other, or null for a section alone. */
    final BeltSpring second;

    BeltPair next;

    BeltPair(BeltSpring first, BeltSpring second) {
        this.first = first;
        this.second = second;
    }
}
