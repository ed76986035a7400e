// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schema and the tables of keys in the documentation are the ones the reader goes by. */
class MachineSchemaTest {
    static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(MachineSchema.text());

    private static final ObjectMapper WITH_COMMENTS =
            JsonMapper.builder()
                    .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    /** Problems the schema sees in a text, as texts; the text may have comments. */
    static List<String> problems(String text) throws JsonProcessingException {
        JsonNode plain = WITH_COMMENTS.readTree(text);
        return SCHEMA.validate(plain.toString(), InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    static List<Path> files() throws IOException {
        return ScenesTest.files();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everySceneAndSeedFitsTheSchema(Path file) throws IOException {
        assertThat(problems(Files.readString(file))).isEmpty();
    }

    /** Run once with {@code -Dfoldwright.refresh=true} after a key has changed. */
    @Test
    void schemaInTheDocumentationIsTheOneOfTheKeys() throws IOException {
        Path file = ScenesTest.ROOT.resolve("docs/machine.schema.json");
        refresh(file, MachineSchema.text());
        assertThat(Files.readString(file)).isEqualTo(MachineSchema.text());
    }

    /** Run once with {@code -Dfoldwright.refresh=true} after a key has changed. */
    @Test
    void tablesInTheDocumentationAreThoseOfTheKeys() throws IOException {
        String mark = "<!-- The tables below are made from the keys themselves. -->\n\n";
        Path file = ScenesTest.ROOT.resolve("docs/machine-file.md");
        String text = Files.readString(file);
        int at = text.indexOf(mark) + mark.length();
        assertThat(at).isGreaterThan(mark.length());
        refresh(file, text.substring(0, at) + KeyTables.markdown());
        assertThat(Files.readString(file).substring(at)).isEqualTo(KeyTables.markdown());
    }

    private static void refresh(Path file, String text) throws IOException {
        if (Boolean.getBoolean("foldwright.refresh")) {
            WholeFile.write(file, text);
        }
    }
}
