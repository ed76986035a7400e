// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Finds sections of belt that are each other's mirror image across the middle line x = 0, and gives
 * them the same digits, which differ in the last place because a route is summed in list order.
 * Where a machine is its own mirror image, a mirrored toolpath then gives the mirrored run to the
 * last bit.
 */
final class MirrorImages {
    private static final double SAME = 1e-9;

    /**
     * Inertias closer than this are those of images: the mass of oblique strands is counted in the
     * order of the route, which leaves parts in a million between them.
     */
    private static final double ALIKE = 1e-5;

    private final BeltSpring[] springs;
    private final int[] partner;
    private final BeltSpring firstAlone;
    private final BeltSpring firstCentred;
    private final MirrorPair firstPair;
    private final MirrorPair firstCouple;

    /**
     * Looks for images and chains the sections.
     *
     * @param equalise whether mirror images are given the same digits; if not, they are couples
     */
    MirrorImages(BeltSpring[] springs, boolean equalise) {
        this.springs = springs;
        partner = new int[springs.length];
        for (int i = 0; i < springs.length; i++) {
            partner[i] = -1;
        }
        for (int i = 0; i < springs.length; i++) {
            for (int j = i; j < springs.length && partner[i] < 0; j++) {
                if (partner[j] < 0 && mirrored(springs[i], springs[j])) {
                    partner[i] = j;
                    partner[j] = i;
                }
            }
        }
        joinAllRotors();
        firstAlone = chainAlone(equalise);
        firstCentred = equalise ? chainCentred() : null;
        MirrorPair pairs = chainPairs(equalise);
        firstPair = equalise ? pairs : null;
        firstCouple = equalise ? null : pairs;
    }

    private static boolean mirrored(BeltSpring a, BeltSpring b) {
        return same(a.g0, -b.g0)
                && same(a.g1, b.g1)
                && same(a.g2, -b.g2)
                && same(a.g3, -b.g3)
                && same(a.g4, b.g4)
                && same(a.g5, -b.g5)
                && same(a.offset, b.offset)
                && same(a.length0, b.length0)
                && same(a.lengthX, -b.lengthX)
                && same(a.lengthY, b.lengthY)
                && a.pretension == b.pretension
                && a.ea == b.ea
                && (ends(a.start, a.startArm, b.end, b.endArm)
                                && ends(a.end, a.endArm, b.start, b.startArm)
                        || ends(a.start, a.startArm, b.start, b.startArm)
                                && ends(a.end, a.endArm, b.end, b.endArm));
    }

    private static boolean ends(Rotor a, double armA, Rotor b, double armB) {
        if (armA == 0 || armB == 0) {
            return armA == armB;
        }
        double sense = Math.signum(armA * armB);
        return same(armA, sense * armB)
                && same(a.perX, -sense * b.perX)
                && same(a.perY, sense * b.perY);
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a));
    }

    private void joinAllRotors() {
        for (int i = 0; i < springs.length; i++) {
            if (partner[i] >= 0) {
                joinRotors(springs[i], springs[partner[i]]);
            }
        }
    }

    /** Chains the sections that have no image. */
    private BeltSpring chainAlone(boolean equalise) {
        BeltSpring chain = null;
        for (int i = springs.length - 1; i >= 0; i--) {
            if (partner[i] < 0 || !equalise && partner[i] == i) {
                springs[i].next = chain;
                chain = springs[i];
            }
        }
        return chain;
    }

    /** Chains the sections that are their own image. */
    private BeltSpring chainCentred() {
        BeltSpring chain = null;
        for (int i = springs.length - 1; i >= 0; i--) {
            if (partner[i] == i) {
                centre(springs[i]);
                springs[i].next = chain;
                chain = springs[i];
            }
        }
        return chain;
    }

    private MirrorPair chainPairs(boolean equalise) {
        MirrorPair chain = null;
        for (int i = springs.length - 1; i >= 0; i--) {
            if (partner[i] > i) {
                if (equalise) {
                    copy(springs[i], springs[partner[i]]);
                }
                MirrorPair pair = new MirrorPair(springs[i], springs[partner[i]]);
                pair.next = chain;
                chain = pair;
            }
        }
        return chain;
    }

    /** Sections that stand alone, as a chain. */
    BeltSpring firstAlone() {
        return firstAlone;
    }

    /** Sections that are their own image, as a chain. */
    BeltSpring firstCentred() {
        return firstCentred;
    }

    /** Pairs, as a chain. */
    MirrorPair firstPair() {
        return firstPair;
    }

    /** Images whose rows change with the place, so that they differ at one, as a chain. */
    MirrorPair firstCouple() {
        return firstCouple;
    }

    /** Tells the rotors at both ends which rotor is their image, and whether it turns alike. */
    private static void joinRotors(BeltSpring a, BeltSpring b) {
        boolean crosswise = ends(a.start, a.startArm, b.end, b.endArm);
        join(a.start, a.startArm, crosswise ? b.end : b.start, crosswise ? b.endArm : b.startArm);
        join(a.end, a.endArm, crosswise ? b.start : b.end, crosswise ? b.startArm : b.endArm);
    }

    private static void join(Rotor a, double armA, Rotor b, double armB) {
        if (armA != 0 && a != b && a.inertia == b.inertia && a.drag == b.drag) {
            a.image = b;
            a.imageSense = Math.signum(armA * armB);
            b.image = a;
            b.imageSense = a.imageSense;
        }
    }

    private static void copy(BeltSpring from, BeltSpring to) {
        to.g0 = -from.g0;
        to.g1 = from.g1;
        to.g2 = -from.g2;
        to.g3 = -from.g3;
        to.g4 = from.g4;
        to.g5 = -from.g5;
        to.offset = from.offset;
        to.length0 = from.length0;
        to.lengthX = -from.lengthX;
        to.lengthY = from.lengthY;
    }

    /** A section that is its own image has nothing in it that would change its sign. */
    private static void centre(BeltSpring s) {
        s.g0 = 0;
        s.g2 = 0;
        s.g3 = 0;
        s.g5 = 0;
        s.lengthX = 0;
    }

    /** Gives inertias or drags of images the same digits. */
    static void equalise(double[] values) {
        for (int i = 0; i < values.length; i++) {
            for (int j = i + 1; j < values.length; j++) {
                boolean alike = Math.abs(values[j] - values[i]) <= ALIKE * Math.abs(values[i]);
                values[j] = alike ? values[i] : values[j];
            }
        }
    }

    /** Gives rotors that turn as mirror images of each other the same digits of their turns. */
    static void equalise(Rotor[] rotors) {
        for (Rotor r : rotors) {
            r.perX = Math.abs(r.perX) < SAME * Math.abs(r.perY) ? 0 : r.perX;
            r.perY = Math.abs(r.perY) < SAME * Math.abs(r.perX) ? 0 : r.perY;
        }
        for (int i = 0; i < rotors.length; i++) {
            for (int j = i + 1; j < rotors.length; j++) {
                Rotor a = rotors[i];
                Rotor b = rotors[j];
                for (int sense = -1; sense <= 1; sense += 2) {
                    if (same(b.perX, -sense * a.perX) && same(b.perY, sense * a.perY)) {
                        b.perX = -sense * a.perX;
                        b.perY = sense * a.perY;
                    }
                }
            }
        }
    }
}
