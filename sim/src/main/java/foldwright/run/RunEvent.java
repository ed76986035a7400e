// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import foldwright.machine.keys.Keys;
import java.util.Objects;

/**
 * Something worth looking at in a run.
 *
 * @param time when [s]
 * @param line of the toolpath, 0 where there is none
 * @param sentence one plain sentence with numbers
 */
public record RunEvent(Kind kind, double time, long line, String sentence) {
    /** Kinds of events. */
    public enum Kind {
        /** The motor comes nearest to falling out. */
        LOWEST_MARGIN("lowest margin"),
        SPRING_LET_GO("spring lets go"),
        SPRING_TOUCHED("spring is touched"),
        NUT_LOAD_REVERSED("nut load turns"),
        STEPS_LOST("steps lost"),
        STALLED("stalls"),
        STOP_REACHED("meets a stop"),
        LATCH_OPENED("latch opens"),
        LATCH_CLOSED("latch catches"),
        LATCH_MISSED("latch misses"),
        ARRIVED("arrived"),
        STEP_HALVED("time step halved"),
        CHATTERS("drive chatters"),
        NOT_SOLVED("not solved"),
        LARGEST_SKEW("largest skew"),
        LARGEST_ERROR("largest error"),
        BELT_SLACK("belt slack"),
        TEETH_CLIMB("teeth climb");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Two or three words for a mark. */
        public String words() {
            return words;
        }

        /** The word in a file. */
        public String word() {
            return Keys.word(this);
        }
    }

    public RunEvent {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(sentence, "sentence");
    }
}
