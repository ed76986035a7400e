// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Direction;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import java.util.Optional;

/** The computations an assessment rests on; a change is judged by running them again. */
public interface Runs {
    /** Force curve over the travel, both ways. */
    ForceCurve curve(Machine machine);

    /** Unpowered, over the travel; empty where that is not computed. */
    Optional<HoldResult> hold(Machine machine);

    /**
     * What pins and arms carry at a pivot height [m], by cause; empty where that is not computed.
     */
    default Optional<PartShares> shares(Machine machine, double height, Direction way) {
        return Optional.empty();
    }
}
