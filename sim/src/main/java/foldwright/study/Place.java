// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Where in the travel something happens.
 *
 * @param height height of the deck pins [m]; empty when it is the same everywhere
 * @param words what is there, e.g. "lying flat"; may be empty
 */
public record Place(OptionalDouble height, String words) {
    public Place {
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(words, "words");
    }

    public static Place at(double height, String words) {
        return new Place(OptionalDouble.of(height), words);
    }

    public static Place anywhere(String words) {
        return new Place(OptionalDouble.empty(), words);
    }

    /** E.g. "109 mm, where the springs let go". */
    public String text() {
        if (height.isEmpty()) {
            return words;
        }
        String number =
                Numerals.fixed(Shown.MILLIMETRE.fromSi(height.getAsDouble()), 0) + "\u00a0mm";
        return words.isEmpty() ? number : number + ", " + words;
    }
}
