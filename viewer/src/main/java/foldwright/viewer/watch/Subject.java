// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.run.BadRunFile;
import foldwright.run.Run;
import foldwright.run.RunFile;
import foldwright.viewer.play.Reel;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What is looked at: a machine, and a run of it where one is shown.
 *
 * @param path toolpath of replays, where one was named
 * @param reel the run
 */
public record Subject(MachineFile machine, Optional<Path> path, Optional<Reel> reel) {
    /** A machine alone. */
    static Subject of(MachineFile machine) {
        return new Subject(machine, Optional.empty(), Optional.empty());
    }

    /**
     * Reads a machine file, or a run file with the machine inside.
     *
     * @throws BadRunFile where a run file cannot be used
     * @throws BadMachineFile where a machine file cannot be used
     */
    static Subject read(Path file, Optional<Path> toolpath) throws BadMachineFile, BadRunFile {
        if (RunFile.isRun(file)) {
            Run run = RunFile.read(file);
            return new Subject(run.machine(), toolpath, Optional.of(new Reel(run)));
        }
        return new Subject(MachineFile.read(file), toolpath, Optional.empty());
    }

    Subject with(Reel run) {
        return new Subject(machine, path, Optional.of(run));
    }
}
