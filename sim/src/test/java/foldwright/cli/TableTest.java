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
}
