// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.lift.LiftNames;
import foldwright.machine.Machine;
import java.util.List;
import java.util.stream.IntStream;

/** Names of what turns the screws, by which loads find it. */
public final class SourceNames {
    private SourceNames() {}

    /** The hand crank, or the motors of the lift in their order. */
    public static List<String> of(Machine machine) {
        if (machine.drive().byHand()) {
            return List.of("hand crank");
        }
        return IntStream.rangeClosed(1, machine.drive().motors())
                .mapToObj(LiftNames::motor)
                .toList();
    }
}
