// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A machine file that was read without a problem.
 *
 * <p>The file is JSON with {@code //} comments, in UTF-8. Either all of it is good and a machine
 * comes out, or {@link BadMachineFile} carries every problem found, each with its place.
 *
 * @param name name of the file as it was given
 * @param text its text
 * @param machine the machine it describes, or one that is tried in its place
 */
public record MachineFile(String name, String text, Machine machine) {

    /**
     * Reads a machine file.
     *
     * @throws BadMachineFile with all problems of the file
     */
    public static MachineFile read(Path file) throws BadMachineFile {
        return read(SourceText.read(file));
    }

    /**
     * Reads a machine from a text.
     *
     * @param name name used in messages
     * @throws BadMachineFile with all problems of the text
     */
    public static MachineFile read(String name, String text) throws BadMachineFile {
        return read(new SourceText(name, text));
    }

    /**
     * Reads a machine from bytes.
     *
     * @param name name used in messages
     * @throws BadMachineFile with all problems of the bytes
     */
    public static MachineFile read(String name, byte[] bytes) throws BadMachineFile {
        return read(SourceText.decode(name, bytes));
    }

    private static MachineFile read(SourceText source) throws BadMachineFile {
        Problems problems = new Problems(source);
        Optional<Node> root = TreeReader.read(source, problems);
        Optional<Machine> machine =
                root.flatMap(node -> new Binder(problems).bind(node, "", Machine.class));
        root.ifPresent(node -> new AssumedPaths(node, problems).check());
        machine.ifPresent(made -> CrossChecks.check(made, Contradictions.in(root.get(), problems)));
        if (machine.isEmpty() || !problems.isEmpty()) {
            throw new BadMachineFile(problems.inOrder());
        }
        return new MachineFile(source.name(), source.text(), machine.get());
    }

    /** The same file with another machine tried in place of the one it describes. */
    public MachineFile trying(Machine other) {
        return new MachineFile(name, text, other);
    }

    /** Key paths that exist in this file, in the order of the file. */
    public List<String> paths() {
        SourceText source = new SourceText(name, text);
        return TreeReader.read(source, new Problems(source)).map(KeyPath::all).orElse(List.of());
    }
}
