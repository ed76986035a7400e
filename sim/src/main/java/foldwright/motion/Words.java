// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/**
 * The words of one line: at most one value a letter, several G and M codes. Reused from line to
 * line.
 */
final class Words {
    static final int MOST_CODES = 12;

    /** Letters of the axes, as a set. */
    static final int AXES = bit('X') | bit('Y') | bit('Z');

    private final double[] values = new double[26];
    private int present;
    private final int[] gCodes = new int[MOST_CODES];
    private final int[] mCodes = new int[MOST_CODES];
    private int gCount;
    private int mCount;
    private int kinds;
    private boolean percent;

    void clear() {
        present = 0;
        gCount = 0;
        mCount = 0;
        kinds = 0;
        percent = false;
    }

    boolean has(char letter) {
        return (present & bit(letter)) != 0;
    }

    boolean hasAny(int letters) {
        return (present & letters) != 0;
    }

    double value(char letter) {
        return values[letter - 'A'];
    }

    void put(char letter, double value) {
        present |= bit(letter);
        values[letter - 'A'] = value;
    }

    /** Letters present, bit 0 for A. */
    int letters() {
        return present;
    }

    static int bit(char letter) {
        return 1 << (letter - 'A');
    }

    /** Adds a G code in tenths (G91.1 is 911); false when there is no room. */
    boolean addG(int tenths) {
        if (gCount == MOST_CODES) {
            return false;
        }
        gCodes[gCount++] = tenths;
        kinds |= Codes.of(tenths).bit();
        return true;
    }

    /** Whether one of the G codes means this. */
    boolean means(Codes.Meaning meaning) {
        return (kinds & meaning.bit()) != 0;
    }

    /** Adds an M code in tenths; false when there is no room. */
    boolean addM(int tenths) {
        if (mCount == MOST_CODES) {
            return false;
        }
        mCodes[mCount++] = tenths;
        return true;
    }

    int gCount() {
        return gCount;
    }

    int g(int i) {
        return gCodes[i];
    }

    int mCount() {
        return mCount;
    }

    int m(int i) {
        return mCodes[i];
    }

    /** Whether the line is a lone percent sign. */
    boolean percent() {
        return percent;
    }

    void markPercent() {
        percent = true;
    }

    boolean isEmpty() {
        return present == 0 && gCount == 0 && mCount == 0;
    }
}
