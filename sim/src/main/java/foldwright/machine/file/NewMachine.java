// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;

/** Starts a new machine file from a seed; never writes over a file. */
public final class NewMachine {
    private static final int LONGEST = 80;
    private static final String ENDING = ".json";
    private static final Set<String> DEVICES =
            Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "lpt1", "lpt2", "lpt3");

    private NewMachine() {}

    /** Thrown where a name cannot be used or its file exists; says what is allowed. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        Refused(String message) {
            super(message);
        }
    }

    /**
     * Writes a new machine file.
     *
     * @param name what the machine is called; its file is named after it
     * @param seed what to start from
     * @param folder where to write it
     * @return the file written
     * @throws Refused if the name cannot be used or the file exists; then nothing is written
     * @throws IOException if the file cannot be written; then there is none
     */
    public static Path create(String name, Seed seed, Path folder) throws Refused, IOException {
        Path file = folder.resolve(fileName(name));
        String title = title(name);
        try {
            MachineFile start = MachineFile.read(seed.word(), seed.text());
            WholeFile.writeNew(file, MachineText.of(start).with("name", title).text());
            return file;
        } catch (FileAlreadyExistsException e) {
            throw new Refused(file + " exists already; choose another name, or move it away");
        } catch (BadMachineFile e) {
            throw new IllegalStateException("the seed " + seed.word() + " is broken", e);
        }
    }

    /**
     * The name of the file of a machine: spaces become hyphens, {@code .json} is added.
     *
     * @throws Refused if the name has characters that file names should not have
     */
    static String fileName(String name) throws Refused {
        String stem = title(name).replaceAll("\\s+", "-");
        for (int i = 0; i < stem.length(); i++) {
            char c = stem.charAt(i);
            boolean plain = Character.isLetterOrDigit(c) || Character.isSurrogate(c);
            if (!plain && (i == 0 || "-_.".indexOf(c) < 0)) {
                throw refused(name);
            }
        }
        String first = stem.toLowerCase(Locale.ROOT).split("\\.", 2)[0];
        if (stem.isEmpty() || stem.endsWith(".") || DEVICES.contains(first)) {
            throw refused(name);
        }
        return stem + ENDING;
    }

    private static String title(String name) throws Refused {
        String tidy = name.strip();
        if (tidy.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            tidy = tidy.substring(0, tidy.length() - ENDING.length());
        }
        if (tidy.length() > LONGEST) {
            throw refused(name);
        }
        return tidy;
    }

    private static Refused refused(String name) {
        return new Refused(
                "the name "
                        + Words.quoted(name)
                        + " cannot be used; allowed: letters, digits, spaces, - _ . with a letter"
                        + " or digit first, at most "
                        + LONGEST
                        + " characters");
    }
}
