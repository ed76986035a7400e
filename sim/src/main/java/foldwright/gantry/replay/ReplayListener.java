// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryKernel;

/** Looks at every step of a replay. */
public interface ReplayListener {
    /**
     * Called after the forces of an instant are known.
     *
     * @param x commanded place of the carriage origin [m]
     * @param y commanded place of the bridge [m]
     */
    void at(double time, long line, double x, double y, GantryKernel kernel);
}
