// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.keys.Keys;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A starter machine file that a new design grows from. */
public enum Seed {
    /** One stage, one screw, one motor. */
    ONE_STAGE("one stage, one screw, one motor"),
    /** One stage turned by hand. */
    HAND_CRANK("one stage, one screw, turned by hand"),
    /** Two stages, two screws on one motor, upright coils. */
    TWO_STAGE("two stages, two screws on one motor by a belt, upright helper springs"),
    /** Three stages, a motor on each of two screws, torsion springs. */
    THREE_STAGE("three stages, two screws with a motor each, torsion springs"),
    /** A gantry with one belt on one stage. */
    PLOTTER("one stage, one screw, and an XY gantry with one belt and two motors on it");

    private final String about;

    Seed(String about) {
        this.about = about;
    }

    /** What is in it, a few words. */
    public String about() {
        return about;
    }

    /** Its name as a person writes it, e.g. {@code one-stage}. */
    public String word() {
        return Keys.word(this);
    }

    /** The seed of that name. */
    public static Optional<Seed> find(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(seed -> seed.word().equals(wanted)).findFirst();
    }

    /** The names of all seeds. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Seed::word).toList();
    }

    /** The text of the file. */
    public String text() {
        String name = "/foldwright/seeds/" + word() + ".json";
        try (InputStream in = Seed.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program is built without " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
