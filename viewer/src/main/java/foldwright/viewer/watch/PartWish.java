// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.file.NearestWord;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import java.util.List;
import java.util.Optional;

/**
 * The part to be read in a picture.
 *
 * @param name of the part, or {@link #WORST}
 */
record PartWish(String name) {
    /** Stands for the part that carries most of the load that is shown. */
    static final String WORST = "worst";

    /** A name that no part of the machine has. */
    static final class NoPartException extends Exception {
        private static final long serialVersionUID = 1L;

        NoPartException(String message) {
            super(message);
        }
    }

    /** The name of a part of the second machine, asked for as "B: name". */
    Optional<String> second() {
        return name.startsWith("B: ") ? Optional.of(name.substring(3)) : Optional.empty();
    }

    /**
     * The part of a scene.
     *
     * @param order ids of the loaded parts, the most loaded first
     */
    Part in(MachineScene scene, List<Integer> order) throws NoPartException {
        if (name.equals(WORST)) {
            return order.stream()
                    .findFirst()
                    .flatMap(scene::part)
                    .orElseThrow(() -> new NoPartException("found --part worst: no load is shown"));
        }
        return scene.part(name).orElseThrow(() -> unknown(scene));
    }

    private NoPartException unknown(MachineScene scene) {
        List<String> names =
                scene.parts().stream()
                        .filter(p -> p.kind() != PartKind.OUTLINE && p.kind() != PartKind.GRID)
                        .map(Part::name)
                        .distinct()
                        .toList();
        String meant =
                NearestWord.of(name, names)
                        .map(n -> "nearest: \"" + n + '"')
                        .orElse("allowed: worst, or one of " + String.join(", ", names));
        return new NoPartException(
                "found --part \"" + name + "\", no part of this machine; " + meant);
    }
}
