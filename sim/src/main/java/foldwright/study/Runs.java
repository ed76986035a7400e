// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.machine.Machine;
import java.util.Optional;

/** The computations an assessment rests on; a change is judged by running them again. */
public interface Runs {
    /** Force curve over the travel, both ways. */
    ForceCurve curve(Machine machine);

    /** Unpowered, over the travel; empty where that is not computed. */
    Optional<HoldResult> hold(Machine machine);
}
