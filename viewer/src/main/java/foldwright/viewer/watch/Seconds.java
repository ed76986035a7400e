// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.file.BadMachineFile;
import foldwright.run.BadRunFile;
import foldwright.run.RunKind;
import foldwright.viewer.beside.Second;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.session.Engine;
import java.nio.file.Path;
import java.util.Optional;

/** Reads second machines and computes what is shown of them. */
final class Seconds {
    private final Engine engine;

    Seconds(Engine engine) {
        this.engine = engine;
    }

    /**
     * The second machine of a file, with a replay where both have a gantry.
     *
     * @param toolpath of the first one's replay
     */
    Second read(Path file, Second.Placing placing, Subject first, Optional<Path> toolpath)
            throws BadMachineFile, BadRunFile, RunMaker.NoRunException {
        Subject other = Subject.read(file, toolpath);
        Optional<Reel> reel = other.reel();
        boolean replays = other.machine().machine().gantry().isPresent();
        if (first.machine().machine().gantry().isPresent() && reel.isEmpty() && replays) {
            reel =
                    Optional.of(
                            new Reel(RunMaker.run(other.machine(), RunKind.REPLAY, other.path())));
        }
        return new Second(
                other.machine(), engine.compared(other.machine().machine()), reel, placing);
    }
}
