// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
    @Test
    void columnsLineUpWithUnitsAndColour() {
        Table table =
                new Table(List.of("check", "margin"), List.of(Table.Side.LEFT, Table.Side.RIGHT));
        table.row("torque, N·m", "1.34×").row("\u001b[36mpins\u001b[0m", "12.0×");
        assertThat(table.text())
                .isEqualTo(
                        """
                        check        margin
                        torque, N·m   1.34×
                        \u001b[36mpins\u001b[0m          12.0×
                        """);
    }

    private static Table checks() {
        Table table =
                new Table(
                        List.of("", "force on the nut", "worst at"),
                        List.of(Table.Side.LEFT, Table.Side.RIGHT, Table.Side.LEFT));
        return table.row("  Wire of the lifting coils", "171 N", "34 mm, lying flat, at the back");
    }

    @Test
    void theLastTextIsBrokenOnANarrowPage() {
        assertThat(checks().text(new Prose(62)))
                .isEqualTo(
                        String.join(
                                "\n",
                                "                             force on",
                                "                              the nut  worst at",
                                "  Wire of the lifting coils     171 N  34 mm, lying flat, at",
                                "                                       the back",
                                ""));
    }

    @Test
    void onANarrowerPageItStandsBelowAndTheFirstIsBroken() {
        assertThat(checks().text(new Prose(32)))
                .isEqualTo(
                        String.join(
                                "\n",
                                "                        force on",
                                "                         the nut",
                                "      worst at",
                                "  Wire of the lifting      171 N",
                                "  coils",
                                "      34 mm, lying flat, at the",
                                "      back",
                                ""));
    }
}
