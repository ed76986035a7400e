// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The parameter MACHINE, a machine file. */
final class MachineArgument {
    @Parameters(index = "0", paramLabel = "MACHINE", description = "Machine file (JSON).")
    private Path file;

    Path file() {
        return file;
    }

    /** Reads the file; all its problems at once are the message when it cannot be used. */
    Machine read() {
        return read(file);
    }

    /** The same, with its text. */
    MachineFile readFile() {
        return readFile(file);
    }

    static Machine read(Path file) {
        return readFile(file).machine();
    }

    private static MachineFile readFile(Path file) {
        try {
            return MachineFile.read(file);
        } catch (BadMachineFile e) {
            throw new BadInput(e.counted());
        }
    }
}
