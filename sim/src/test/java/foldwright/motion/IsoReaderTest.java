// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.motion.ToolpathException.Fault;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Line by line against NISTIR 6556 (Kramer, Proctor, Messina, 2000); the section stands beside each
 * case. Cases without one are common practice, no source.
 */
class IsoReaderTest {
    /** Coordinates are decimal inputs times a unit: a few roundings of numbers below 1 m. */
    private static final Offset<Double> ROUNDING = within(1e-15);

    @Test
    void blanksMeanNothingEvenInsideNumbers() throws ToolpathException { // 3.3
        Move move = Paths.read("g0x +0. 12 34y 7").get(0);
        assertThat(move.rate()).isEqualTo(Move.Rate.RAPID);
        assertThat(move.end(0)).isCloseTo(0.1234e-3, ROUNDING);
        assertThat(move.end(1)).isCloseTo(7e-3, ROUNDING);
    }

    @Test
    void helixInCentreForm() throws ToolpathException { // 3.5.3.2
        Move move = Paths.read("G0 X7 Y7 Z9\nG17 G2 x 10 y 16 i 3 j 4 z 9 F60").get(1);
        assertThat(move.radius()).isCloseTo(5e-3, ROUNDING);
        assertThat(Math.toDegrees(move.sweep())).isCloseTo(-143.13010235, within(1e-8));
        assertThat(move.length()).isCloseTo(12.4904577e-3, within(5e-11));
        double[] point = new double[3];
        move.point(move.length() / 2, point);
        assertThat(Math.hypot(point[0] - 10e-3, point[1] - 11e-3)).isCloseTo(5e-3, within(1e-15));
    }

    @Test
    void offsetsAddUp() throws ToolpathException { // 3.5.18
        List<Move> moves = Paths.read("G0 X4\nG92 X7\nG92 X9\nG1 X10 F60");
        assertThat(moves.get(1).end(0)).isCloseTo(5e-3, ROUNDING);
    }

    @Test
    void inchesAndMillimetresNameTheSamePoint() throws ToolpathException {
        assertThat(Paths.read("G1 X25.4 F100\nG20 X1")).hasSize(1);
    }

    /** IEEE Std 1003.1-2017, definition 3.206: a line ends with its newline, so none follows it. */
    @ParameterizedTest
    @ValueSource(
            strings = {"G0 X1\nG0 X2\n", "G0 X1\r\nG0 X2\r\n", "G0 X1\rG0 X2\r", "G0 X1\nG0 X2"})
    void theEndOfTheLastLineIsNoLine(String text) throws ToolpathException {
        IsoReader reader = Paths.reader(text);
        assertThat(Paths.all(reader)).hasSize(2);
        assertThat(reader.next(new Move())).isFalse();
        assertThat(reader.summary().lines()).isEqualTo(2);
    }

    @Test
    void linesWithChecksumsAreRead() throws ToolpathException {
        IsoReader reader =
                Paths.reader(
                        "N10 G92 X0 Y0 Z0 A0 B0*107\r\nN0 M106*36\r\nN1 G28*18\r\nN2 M107*39\r\n");
        assertThat(Paths.all(reader)).isEmpty();
        assertThat(reader.summary().skipped())
                .extracting(ReadSummary.Skipped::word)
                .containsExactly("M106", "M107", "A", "B");
    }

    @Test
    void longLineNumbersAreTaken()
            throws ToolpathException { // 3.3.1 stops at five digits; files in use do not
        assertThat(Paths.read("N123456 G1 X1 F60")).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "G0 G1 X1               | SAME_GROUP",
                "G90 G91                | SAME_GROUP",
                "G92 G1 X2              | SAME_GROUP",
                "G28 G1 X2              | SAME_GROUP",
                "G2 X5 F60              | BAD_ARC",
                "G2 I5 F60              | NO_AXIS_WORD",
                "G2 X0 Y0 R5 F60        | BAD_ARC",
                "G2 X30 R5 F60          | BAD_ARC",
                "G2 X10 Y3 I5 J3 F60    | BAD_ARC",
                "G4 P-1                 | BAD_DWELL",
                "G4                     | BAD_DWELL",
                "G1                     | NO_AXIS_WORD",
                "X1                     | NO_MOTION_MODE",
                "G80 X1                 | NO_MOTION_MODE",
                "(abc                   | OPEN_COMMENT",
                "(a (b) c)              | NESTED_COMMENT",
                "#1=5                   | OUTSIDE_SUBSET",
                "G1 X[1+2]              | OUTSIDE_SUBSET",
                "O6 call                | OUTSIDE_SUBSET",
                "G81 X1 Z-1 R1          | OUTSIDE_SUBSET",
                "G91.1                  | none",
                "G90.1                  | OUTSIDE_SUBSET",
                "G93                    | OUTSIDE_SUBSET",
                "G1 X1.2.3              | BAD_NUMBER",
                "G1 X                   | BAD_NUMBER",
                "G1 X-                  | BAD_NUMBER",
                "G1.23 X1               | BAD_NUMBER",
                "G-1                    | BAD_NUMBER",
                "G1 X1 X2               | REPEATED_WORD",
                "G1 X1 N5               | REPEATED_WORD",
                "G1 X1 F-5              | BAD_FEED",
                "F0 G1 X1               | BAD_FEED",
                "M1 M2 M3 M4 M5         | TOO_MANY_WORDS",
                "G1 X1 ?                | BAD_CHARACTER",
                "G1 X1 %                | BAD_CHARACTER",
                "G1 X1*3                | CHECKSUM",
                "G0 X99999999999        | OUT_OF_REACH",
                "G0 X12345678901234567890 | BAD_NUMBER",
            })
    void faultsAreNamed(String text, String fault) throws ToolpathException {
        if (fault.equals("none")) {
            assertThat(Paths.read(text)).isEmpty();
            return;
        }
        assertThatThrownBy(() -> Paths.read("\n\n" + text))
                .isInstanceOfSatisfying(
                        ToolpathException.class,
                        e -> {
                            assertThat(e.fault()).isEqualTo(Fault.valueOf(fault));
                            assertThat(e.line()).isEqualTo(3);
                            assertThat(e).hasMessageContaining(text.strip());
                        });
    }

    @Test
    void messageSaysWhereWhatAndWhatIsAllowed() {
        String text = "\n".repeat(1_234_566) + "G1 X1..5";
        assertThatThrownBy(() -> Paths.read(text))
                .hasMessage(
                        "line 1 234 567: two points in the number behind X in \"G1 X1..5\"; allowed: one point at most");
    }

    @Test
    void whatFollowsTheEndIsIgnored() throws ToolpathException { // 3.6.1
        assertThat(Paths.read("G0 X1\nM2\nG0 X2\n???")).hasSize(1);
        assertThat(Paths.read("%\nG0 X1\n%\nG0 X2")).hasSize(1); // 3.1
    }

    @Test
    void axisWordsOfAnUnknownCodeAreNoMove() throws ToolpathException {
        IsoReader reader = Paths.reader("G1 X1 F60\nG29 X5\nX2");
        assertThat(Paths.all(reader)).extracting(m -> m.end(0)).containsExactly(1e-3, 2e-3);
        assertThat(reader.summary().skipped())
                .extracting(ReadSummary.Skipped::word)
                .containsExactly("G29", "X");
    }

    @Test
    void wordsThatMoveNothingAreCountedOnce() throws ToolpathException {
        IsoReader reader = Paths.reader("T1 M6\nG1 X1 E0.5 F60\nX2 E0.6\nG1 E0.1 F30\nF90\nS5 M3");
        assertThat(Paths.all(reader)).hasSize(2);
        assertThat(reader.summary().skipped())
                .containsExactly(
                        new ReadSummary.Skipped("M3", 1, 6),
                        new ReadSummary.Skipped("M6", 1, 1),
                        new ReadSummary.Skipped("E", 3, 2),
                        new ReadSummary.Skipped("S", 1, 6),
                        new ReadSummary.Skipped("T", 1, 1));
    }

    @Test
    void movesBeforeAnyFeedAreTold() throws ToolpathException {
        IsoReader reader = Paths.reader("G1 X1");
        assertThat(Paths.all(reader).get(0).feed()).isEqualTo(0.05);
        assertThat(reader.summary().movesBeforeFeed()).isEqualTo(1);
    }

    @Test
    void homingFollowsTheSetting() throws ToolpathException {
        String text = "G0 X5 Y6\nG28 X0";
        assertThat(Paths.all(Paths.reader(text, settings(ReaderSettings.Homing.NAMED_AXES))))
                .last()
                .satisfies(m -> assertThat(m.end(1)).isEqualTo(6e-3));
        assertThat(Paths.all(Paths.reader(text, settings(ReaderSettings.Homing.ALL_AXES_BY_POINT))))
                .hasSize(3)
                .last()
                .satisfies(m -> assertThat(m.end(1)).isEqualTo(0));
    }

    private static ReaderSettings settings(ReaderSettings.Homing homing) {
        return new ReaderSettings(ReaderSettings.DwellUnit.SECONDS, homing, 0.05, 10);
    }

    @Test
    void incrementsAndPlanes() throws ToolpathException {
        List<Move> moves = Paths.read("G91 G1 X1 Y2 F60\nX1\nG18 G2 X4 I2 K0 F60\nG90 X0 Z0 R5");
        assertThat(moves.get(1).end(0)).isCloseTo(2e-3, ROUNDING);
        Move arc = moves.get(2);
        double[] point = new double[3];
        arc.point(arc.length() / 2, point);
        // Clockwise in ZX seen from +Y: from the left end of a diameter along X the way leads over
        // +Z ... -Z?
        // Z to X is counter-clockwise, so clockwise from -X towards +X passes +Z.
        assertThat(point[2]).isCloseTo(-2e-3, within(1e-15));
        assertThat(point[1]).isCloseTo(2e-3, ROUNDING);
    }

    @Test
    void roundedArcsBlendTheirRadius() throws ToolpathException {
        IsoReader reader = Paths.reader("G20 F10\nG0 X0 Y0\nG3 X1.0001 Y1 I0 J1");
        Move arc = Paths.all(reader).get(0);
        assertThat(reader.summary().roundedArcs()).isEqualTo(1);
        double[] point = new double[3];
        arc.point(arc.length(), point);
        assertThat(point[0]).isCloseTo(arc.end(0), within(1e-15));
        assertThat(point[1]).isCloseTo(arc.end(1), within(1e-15));
    }

    @Test
    void pausesOfNoLengthDoNotStop() throws ToolpathException {
        assertThat(Paths.read("G1 X1 F60\nG4 P0\nX2")).hasSize(2);
        assertThat(Paths.read("G1 X1 F60\nG4 P0.5\nX2")).hasSize(3);
        assertThat(Paths.read("G1 X1 F60\nM0\nX2")).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "G0 X1\r\nX2\r\n",
                "G0 X1\nX2",
                "G0 X1\rX2\r",
                "\u00EF\u00BB\u00BFG0 X1\n\n\nX2\n\n"
            })
    void anyLineEndWillDo(String text) throws ToolpathException {
        assertThat(Paths.read(text)).hasSize(2);
    }

    @Test
    void linesAcrossBufferEndsAreWhole() throws ToolpathException {
        // One byte at a time, and lines whose ends fall on every place of the 64 KB buffer.
        String text = ("G1 X1 F60\r\nX2 (" + "c".repeat(997) + ")\r\nX1\r\n").repeat(300);
        List<Move> whole = Paths.read(text);
        InputStream drops =
                new ByteArrayInputStream(
                        text.getBytes(java.nio.charset.StandardCharsets.US_ASCII)) {
                    @Override
                    public synchronized int read(byte[] b, int off, int len) {
                        return super.read(b, off, Math.min(len, 1));
                    }
                };
        List<Move> dropped = Paths.all(new IsoReader(drops, ReaderSettings.standard()));
        assertThat(whole).hasSize(601);
        assertThat(dropped).hasSize(601);
        assertThat(dropped.get(600).line()).isEqualTo(whole.get(600).line()).isEqualTo(900);
    }

    @Test
    void aBinaryFileIsRefused() {
        byte[] bytes = new byte[300_000];
        java.util.Arrays.fill(bytes, (byte) 'a');
        assertThatThrownBy(
                        () ->
                                Paths.all(
                                        new IsoReader(
                                                new ByteArrayInputStream(bytes),
                                                ReaderSettings.standard())))
                .hasMessageStartingWith("line 1: a line of more than 65 536 bytes");
    }
}
