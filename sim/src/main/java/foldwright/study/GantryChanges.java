// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** Changes of a gantry's moves and masses that several checks try. */
final class GantryChanges {
    private GantryChanges() {}

    static Change lighterCarriage() {
        return new Change(
                "carriage a fifth lighter",
                m ->
                        Edit.with(
                                m,
                                "gantry.carriage.mass",
                                0.8 * m.gantry().orElseThrow().carriage().mass()));
    }

    /**
     * A lower acceleration.
     *
     * @param words as it would be said
     * @param share of what is asked for now [1]
     */
    static Change slower(String words, double share) {
        return new Change(
                words,
                m ->
                        Edit.with(
                                m,
                                "gantry.moves.acceleration",
                                share * m.gantry().orElseThrow().moves().acceleration()));
    }
}
