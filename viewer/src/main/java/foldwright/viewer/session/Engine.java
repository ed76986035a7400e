// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;

/**
 * Computes what the sheet shows. Called off the drawing thread; a call may be stopped by
 * interrupting it.
 */
public interface Engine {
    /** Enough for the plot, the ribbon and the ink while a number is being dragged. */
    Results quick(Machine machine);

    /** The same over all heights, for a machine that is only compared with. */
    Results compared(Machine machine);

    /** The force curve, on which all else stands. */
    ForceCurve curve(Machine machine);

    /**
     * What the curve alone tells: plot, ribbon, ink and whether it leaves the fold.
     *
     * @param curve of the machine
     */
    Results fold(Machine machine, ForceCurve curve);

    /**
     * Everything: all checks, remedies.
     *
     * @param curve of the machine
     * @param progress told what is being done
     */
    Results whole(Machine machine, ForceCurve curve, Consumer<String> progress);

    /**
     * What pins and arms carry at a height [m] while rising, by cause; empty where the lift is
     * locked.
     */
    Optional<PartShares> shares(Machine machine, double height);

    /**
     * Lowest motor margin over the travel [1] of variants of a machine, for the points of hills;
     * may be asked by several threads.
     *
     * @param curve of the machine
     */
    ToDoubleFunction<Machine> margins(Machine machine, ForceCurve curve);
}
