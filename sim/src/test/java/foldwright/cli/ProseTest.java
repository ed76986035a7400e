// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProseTest {
    private static final String SENTENCE = "The lift needs 0.141 N·m at the motor at 109 mm.";

    @Test
    void linesBreakBetweenWordsAndHangBelowTheSentence() {
        assertThat(new Prose(22).of("· ", SENTENCE))
                .isEqualTo(
                        """
                        · The lift needs 0.141
                          N·m at the motor at
                          109 mm.""");
    }

    @Test
    void nothingIsLostAndNoLineIsWiderThanThePage() {
        for (int width = 8; width < 60; width++) {
            List<String> lines = Prose.lines(SENTENCE, width);
            assertThat(String.join(" ", lines)).isEqualTo(SENTENCE);
            assertThat(lines).allMatch(l -> l.length() <= 60);
            int w = width;
            assertThat(lines).allMatch(l -> l.length() <= w);
        }
    }

    @Test
    void aWordWiderThanThePageStandsAlone() {
        assertThat(Prose.lines("a wonderfully long word", 8))
                .containsExactly("a", "wonderfully", "long", "word");
    }

    @Test
    void colourTakesNoPlace() {
        assertThat(Prose.length("\u001b[36m● holds\u001b[0m")).isEqualTo(7);
    }

    @Test
    void theWidthOfTheTerminalIsTakenWithinReason() {
        assertThat(Prose.widthOf("80")).isEqualTo(80);
        assertThat(Prose.widthOf("500")).isEqualTo(120);
        assertThat(Prose.widthOf("3")).isEqualTo(40);
        assertThat(Prose.widthOf(null)).isEqualTo(100);
        assertThat(Prose.widthOf("wide")).isEqualTo(100);
        assertThat(Prose.widthOf("")).isEqualTo(100);
    }

    @Test
    void theLastColumnOfATableIsBrokenToo() {
        Table table =
                new Table(List.of("time", "event"), List.of(Table.Side.RIGHT, Table.Side.LEFT));
        table.row("5.99 s", "The front springs let go and the motor carries on.");
        assertThat(table.text(new Prose(34)))
                .isEqualTo(
                        """
                          time  event
                        5.99 s  The front springs let go
                                and the motor carries on.
                        """);
    }
}
