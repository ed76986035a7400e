// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * All belts of a gantry, with the axles that motors drive.
 *
 * @param name of the layout, for people
 * @param belts one or more
 * @param drivenAxles axles with a motor, in the order of the motors
 * @param shafts that join axles
 * @param travel of the carriage
 */
public record BeltLayout(
        String name,
        List<Belt> belts,
        List<String> drivenAxles,
        List<CrossShaft> shafts,
        Travel travel) {
    public BeltLayout {
        Objects.requireNonNull(name, "name");
        belts = List.copyOf(belts);
        drivenAxles = List.copyOf(drivenAxles);
        shafts = List.copyOf(shafts);
        Objects.requireNonNull(travel, "travel");
        if (belts.isEmpty()) {
            throw new IllegalArgumentException("layout \"" + name + "\" has no belt");
        }
    }

    /** The same layout with every belt changed in one way. */
    public BeltLayout withBelts(UnaryOperator<Belt> change) {
        List<Belt> changed = belts.stream().map(change).toList();
        return new BeltLayout(name, changed, drivenAxles, shafts, travel);
    }

    /** The same layout with one belt changed. */
    public BeltLayout withBelt(int index, Belt belt) {
        java.util.ArrayList<Belt> changed = new java.util.ArrayList<>(belts);
        changed.set(index, belt);
        return new BeltLayout(name, changed, drivenAxles, shafts, travel);
    }
}
