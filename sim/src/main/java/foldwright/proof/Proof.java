// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import java.util.List;

/** All chapters of published values, in the order in which they are printed. */
public final class Proof {
    private Proof() {}

    /** The chapters. */
    public static List<ProofChapter> chapters() {
        return List.of(
                new ThreadChapter(),
                new SpringChapter(),
                new ColumnChapter(),
                new MotorChapter(),
                new BearingChapter(),
                new RailChapter(),
                new BeltChapter(),
                new BeamChapter(),
                new SafetyChapter(),
                new MotionChapter(),
                new GantryChapter(),
                new MultibodyMotionChapter(),
                new MultibodyLoadsChapter());
    }
}
