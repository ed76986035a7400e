// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A lift turned by hand is never said to have a motor. */
class CrankWordsTest {
    private static final String SEED = Path.of("..", "seeds", "hand-crank.json").toString();

    @ParameterizedTest
    @ValueSource(strings = {"assess", "curve", "hold"})
    void namesTheCrank(String command) {
        Terminal.Result result = Terminal.run(command, SEED);
        assertThat(result.exit()).isEqualTo(ExitCode.HOLDS);
        assertThat(result.out()).contains("crank").doesNotContainIgnoringCase("motor");
    }
}
