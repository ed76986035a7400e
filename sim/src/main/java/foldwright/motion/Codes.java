// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/**
 * What a G code means to a replay. Codes are in tenths: G91.1 is 911. Groups and codes: NISTIR 6556
 * (2000), tables 5 and 6; which codes change geometry beyond the subset is read from the same
 * tables.
 */
final class Codes {
    /** What is done with a code. */
    enum Meaning {
        MOTION(1),
        DWELL(5),
        PLANE(2),
        UNITS(4),
        DISTANCE(3),
        HOME(5),
        OFFSET(5),
        /**
         * Changes nothing that a replay sees, or only what it may leave out (tool length, work
         * offset, ...).
         */
        SKIPPED(0),
        /**
         * Changes where the tool goes in a way that is not read: leaving it out would replay
         * another path.
         */
        REFUSED(0),
        /** Not known: left out together with the axis words of its line. */
        UNKNOWN(0);

        /**
         * Modal group where it matters here, 0 for none. Two of one group on a line are a fault.
         */
        final int group;

        Meaning(int group) {
            this.group = group;
        }

        /** This meaning in a set of meanings. */
        int bit() {
            return 1 << ordinal();
        }
    }

    /** No known code is larger. */
    private static final int CODES = 1000;

    private static final Meaning[] MEANINGS = new Meaning[CODES];

    static {
        for (int i = 0; i < CODES; i++) {
            MEANINGS[i] = read(i);
        }
    }

    private Codes() {}

    static Meaning of(int tenths) {
        return tenths < CODES ? MEANINGS[tenths] : Meaning.UNKNOWN;
    }

    private static Meaning read(int tenths) {
        return switch (tenths) {
            case 0, 10, 20, 30 -> Meaning.MOTION;
            case 40 -> Meaning.DWELL;
            case 170, 180, 190 -> Meaning.PLANE;
            case 200, 210 -> Meaning.UNITS;
            case 900, 910 -> Meaning.DISTANCE;
            case 280 -> Meaning.HOME;
            case 920 -> Meaning.OFFSET;
            case 150,
                    400,
                    410,
                    411,
                    420,
                    421,
                    430,
                    490,
                    500,
                    540,
                    550,
                    560,
                    570,
                    580,
                    590,
                    591,
                    592,
                    593,
                    610,
                    611,
                    640,
                    690,
                    800,
                    911,
                    940,
                    970,
                    980,
                    990 ->
                    Meaning.SKIPPED;
            case 50,
                    51,
                    52,
                    60,
                    70,
                    71,
                    160,
                    281,
                    300,
                    301,
                    330,
                    331,
                    382,
                    383,
                    384,
                    385,
                    431,
                    510,
                    520,
                    530,
                    680,
                    700,
                    710,
                    730,
                    760,
                    810,
                    820,
                    830,
                    840,
                    850,
                    860,
                    870,
                    880,
                    890,
                    901,
                    921,
                    922,
                    923,
                    930,
                    950,
                    960 ->
                    Meaning.REFUSED;
            default -> Meaning.UNKNOWN;
        };
    }

    /** The code as written: G91.1, G2. */
    static String name(char letter, int tenths) {
        return tenths % 10 == 0
                ? letter + "" + tenths / 10
                : letter + "" + tenths / 10 + "." + tenths % 10;
    }
}
