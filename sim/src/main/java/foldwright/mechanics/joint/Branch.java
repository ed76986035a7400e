// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;
import java.util.Locale;
import java.util.Objects;

/**
 * The range of a coordinate on the branch of the linkage that is meant. A soft lift near flat has
 * an equilibrium folded through as well, and Newton is glad to find that one.
 *
 * @param name for messages
 * @param coordinate what tells the branches apart
 * @param least smallest value on the branch [m or rad]
 * @param most largest value on the branch [m or rad]
 */
public record Branch(String name, Coordinate coordinate, double least, double most) {
    public Branch {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(coordinate, "coordinate");
        if (!(least < most)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT, "branch \"%s\": %s to %s is empty", name, least, most));
        }
    }

    /** Whether a state lies on the branch. */
    public boolean holds(State s) {
        double v = coordinate.value(s);
        return v >= least && v <= most;
    }
}
