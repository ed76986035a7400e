// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Finding;
import foldwright.lift.ForceCurve;

/** Words for places of the travel. */
final class Places {
    /** Heights nearer than this share of the travel are the same place. */
    private static final double SAME = 0.004;

    private Places() {}

    /** The place at a height, with what happens there. */
    static Place of(ForceCurve curve, double flat, double top, double height) {
        double same = SAME * (top - flat);
        if (height - flat <= same) {
            return Place.at(height, "lying flat");
        }
        if (top - height <= same) {
            return Place.at(height, "at the top");
        }
        for (Finding f : curve.findings()) {
            if (height >= f.from() - same && height <= f.to() + same) {
                if (f.kind() == Finding.Kind.SPRING_LETS_GO) {
                    return Place.at(height, "where the springs let go");
                }
                if (f.kind() == Finding.Kind.NUT_LOAD_REVERSES) {
                    return Place.at(height, "where the nut changes sides");
                }
            }
        }
        return Place.at(height, "");
    }
}
