// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading of reference tables and search by name. */
class TableTest {
    private static Table read(String text) throws IOException {
        return Table.read("t.csv", new StringReader(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bearings_deep_groove.csv",
                "bearings_ey_factors.csv",
                "belt_standards.csv",
                "belt_teeth_in_mesh.csv",
                "belts.csv",
                "friction.csv",
                "materials.csv",
                "motor_frames.csv",
                "motors_stepper_typical.csv",
                "plastics_allowables.csv",
                "rails_miniature.csv",
                "safety_gaps_forces.csv",
                "spring_materials.csv",
                "spring_wire.csv",
                "threads_trapezoidal.csv"
            })
    void everyShippedTableStatesItsSources(String file) {
        Table table = Table.shipped(file);
        assertThat(table.columns()).contains("source");
        assertThat(table.rows()).isNotEmpty();
        for (Table.Row row : table.rows()) {
            assertThat(row.text("source")).as("%s line %d", file, row.line()).isNotBlank();
        }
    }

    @Test
    void cellsAreReadAsWrittenAndAsSi() throws IOException {
        Table table = read("name,d_mm,n\r\n\"a, \"\"b\"\"\", 2.5 ,3\n,,\n");
        Table.Row row = table.rows().get(0);
        assertThat(row.text("name")).isEqualTo("a, \"b\"");
        assertThat(row.number("d_mm", Table.MILLI)).isCloseTo(0.0025, within(1e-18));
        assertThat(row.whole("n")).isEqualTo(3);
        assertThat(row.line()).isEqualTo(2);
        assertThat(table.rows().get(1).optional("d_mm", Table.MILLI)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "abc | t.csv:2, column \"d_mm\": found \"abc\", allowed: a number",
                "NaN | t.csv:2, column \"d_mm\": found \"NaN\", allowed: a finite number"
            })
    void badNumbersNameTheirPlace(String cell, String message) throws IOException {
        Table.Row row = read("d_mm\n" + cell + "\n").rows().get(0);
        assertThatThrownBy(() -> row.number("d_mm", 1))
                .isInstanceOf(TableException.class)
                .hasMessage(message);
    }

    @Test
    void malformedTablesNameTheirPlace() throws IOException {
        assertThatThrownBy(() -> read(""))
                .hasMessage(
                        "t.csv:1, column \"\": found \"nothing\", allowed: a header line with column"
                                + " names");
        assertThatThrownBy(() -> read("a,a\n")).hasMessageContaining("the name twice");
        assertThatThrownBy(() -> read("a,b\n1\n"))
                .isInstanceOfSatisfying(
                        TableException.class,
                        e -> {
                            assertThat(e.line()).isEqualTo(2);
                            assertThat(e.table()).isEqualTo("t.csv");
                            assertThat(e.column()).isEmpty();
                        });
        assertThatThrownBy(() -> read("a\n\"x\n")).hasMessageContaining("an open quote");
        Table.Row row = read("a,b\n1,2\n").rows().get(0);
        assertThatThrownBy(() -> row.text("c")).hasMessageContaining("one of a, b");
        assertThatThrownBy(() -> Table.shipped("nothing.csv"))
                .hasMessageContaining("a table shipped with the program");
    }

    @ParameterizedTest
    @CsvSource({
        "aluminum, aluminium",
        "steel, steel",
        "stel, steel",
        "bras, brass",
        "acetal, acetal copolymer"
    })
    void nearestNamesAreThoseWrittenAlike(String asked, String nearest) {
        Catalog<String> catalog =
                Catalog.of(
                        "stuff",
                        List.of("steel", "aluminium", "brass", "acetal copolymer"),
                        name -> name,
                        Catalog::plain);
        assertThat(catalog.nearest(asked, 1)).containsExactly(nearest);
    }

    @Test
    void catalogFindsByPlainSpellingAndRefusesTwins() {
        Catalog<String> catalog =
                Catalog.of("stuff", List.of("PLA, printed"), name -> name, Catalog::plain);
        assertThat(catalog.find("pla printed")).contains("PLA, printed");
        assertThat(catalog.find("PLA")).isEmpty();
        assertThatThrownBy(() -> catalog.get("PLA"))
                .hasMessage("no stuff is called \"PLA\"; nearest: PLA, printed");
        assertThatThrownBy(
                        () -> Catalog.of("stuff", List.of("a", "A"), name -> name, Catalog::plain))
                .hasMessage("two stuff entries called A");
    }

    @Test
    void spellingDistanceCountsEditsAndSwaps() {
        assertThat(SpellingDistance.between("steel", "steel")).isZero();
        assertThat(SpellingDistance.between("setel", "steel")).isEqualTo(1);
        assertThat(SpellingDistance.between("stal", "steel")).isEqualTo(2);
        assertThat(SpellingDistance.between("pla", "plaprinted")).isEqualTo(7 * 0.25);
    }
}
