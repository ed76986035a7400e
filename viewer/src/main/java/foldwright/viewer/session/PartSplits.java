// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.PartShares;
import java.util.Optional;

/** Where a reading finds what pins and arms of one machine carry, by cause. */
public interface PartSplits {
    /** None are known, none are coming. */
    PartSplits NONE = height -> new Answer(State.NONE, Optional.empty());

    /** How far an answer is. */
    enum State {
        /** The shares belong to the height asked for. */
        KNOWN,
        /** Being computed; the shares, if there are any, are those of another height. */
        COMING,
        /** There are none, such as where the lift is locked. */
        NONE
    }

    /**
     * What is known.
     *
     * @param shares of that height, or others of the same machine whose rows keep their room
     */
    record Answer(State state, Optional<PartShares> shares) {
        /** What was computed for the height asked for. */
        public static Answer computed(Optional<PartShares> shares) {
            return new Answer(shares.isPresent() ? State.KNOWN : State.NONE, shares);
        }
    }

    /** The shares at a height of the force curve [m], while rising. */
    Answer at(double height);
}
