// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import foldwright.proof.Proof;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProofCommandTest {
    @Test
    void jsonIsAnArrayOfObjectsWithTheFixedKeys() throws IOException {
        Terminal.Result result = Terminal.run("proof", "--only", "screws", "--json");
        JsonNode array = new ObjectMapper().readTree(result.out());
        assertThat(array.isArray()).isTrue();
        assertThat(array).isNotEmpty();
        for (JsonNode value : array) {
            List<String> keys = new ArrayList<>();
            value.fieldNames().forEachRemaining(keys::add);
            assertThat(keys)
                    .contains(
                            "id",
                            "computed",
                            "published",
                            "unit",
                            "deviation",
                            "tolerance",
                            "source",
                            "pass");
            assertThat(value.get("pass").asBoolean()).as(value.toString()).isTrue();
        }
        assertThat(result.exit()).isEqualTo(ExitCode.HOLDS);
    }

    @Test
    void aWordThatFitsNothingNamesTheChapters() {
        Terminal.Result result = Terminal.run("proof", "--only", "zebra");
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.err()).contains("zebra").contains(Proof.chapters().get(0).title());
    }

    @Test
    void everyValueStatesAUniqueNameAndASource() {
        List<String> ids = new ArrayList<>();
        Proof.chapters().forEach(c -> c.compute().forEach(v -> ids.add(v.id())));
        assertThat(ids).doesNotHaveDuplicates();
    }
}
