// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardStreamTest {
    /** Fails as a full disk does. */
    private static Writer failing(String reason) {
        return new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException(reason);
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
    }

    @Test
    void aFullDiskIsTold() {
        StandardStream full = new StandardStream(failing("No space left on device"));
        assertThatThrownBy(() -> full.write("x")).isInstanceOf(IOException.class);
        assertThat(full.trouble()).contains("No space left on device");
    }

    @Test
    void aReaderWhoHasSeenEnoughIsNoTrouble() {
        StandardStream closed = new StandardStream(failing("Broken pipe"));
        assertThatThrownBy(() -> closed.write("x")).isInstanceOf(IOException.class);
        assertThat(closed.trouble()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "● holds, o holds",
        "✕ fails, x fails",
        "1.34×, 1.34x",
        "0.280\u00a0N·m, 0.280 N.m",
        "1\u2009211\u00a0N, 1 211 N",
        "3.00\u00a0m/s², 3.00 m/s2",
        "−118\u00a0mm, -118 mm",
        "5.13°, 5.13deg",
        "Bänk, Bank",
        "worst →, worst >",
        "字, ?"
    })
    void signsBecomeTheNearestPlainOnes(String sign, String plain) throws IOException {
        StringWriter to = new StringWriter();
        try (PlainSigns signs = new PlainSigns(to)) {
            signs.write(sign);
        }
        assertThat(to).hasToString(plain);
    }

    @Test
    void onlyCharacterSetsWithoutTheSignsNeedIt() {
        assertThat(PlainSigns.shownIn(StandardCharsets.UTF_8)).isTrue();
        assertThat(PlainSigns.shownIn(StandardCharsets.US_ASCII)).isFalse();
        assertThat(PlainSigns.shownIn(Charset.forName("ISO-8859-15"))).isFalse();
    }
}
