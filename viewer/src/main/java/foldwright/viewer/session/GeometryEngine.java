// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.machine.Machine;
import java.util.function.Consumer;

/** Computes nothing: the machine is shown by its geometry alone, and the cards say so. */
public final class GeometryEngine implements Engine {
    @Override
    public Results quick(Machine machine) {
        return Results.NONE;
    }

    @Override
    public Results whole(Machine machine, Consumer<String> progress) {
        return Results.NONE;
    }

    @Override
    public double worstMargin(Machine machine) {
        return Double.NaN;
    }
}
