// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.CrossBar;
import foldwright.machine.part.Spot;
import foldwright.machine.part.Teeth;
import foldwright.quantity.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Keys described on record components, and the checks that come from them. */
class KeysTest {
    /** Every record that is part of a machine file. */
    static List<Class<?>> records() {
        return new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("foldwright.machine")
                        .stream()
                        .filter(type -> type.isAnnotatedWith(Kind.class) && type.isRecord())
                        .map(KeysTest::load)
                        .toList();
    }

    private static Class<?> load(JavaClass type) {
        return type.reflect();
    }

    @Test
    void thereAreManyRecords() {
        assertThat(records()).hasSizeGreaterThan(60);
    }

    @ParameterizedTest
    @MethodSource("records")
    void everyRecordDescribesEveryKeyAndEveryNumberHasARange(Class<?> type) {
        for (KeyOf key : Keys.of(type)) {
            boolean number = key.type() == double.class || key.type() == int.class;
            assertThat(key.about()).as(key.name()).isNotBlank().doesNotEndWith(".");
            if (number && !key.isList()) {
                assertThat(key.range()).as(type + " " + key.name()).isNotEqualTo(Range.ALL);
            }
            if (key.isList()) {
                assertThat(key.range()).as(type + " " + key.name()).isNotEqualTo(Range.ALL);
            }
        }
    }

    @Test
    void constructorsRefuseWhatTheirKeysDoNotAllow() {
        assertThatThrownBy(() -> new Spot(Double.NaN, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Spot: x is NaN [SI], allowed: -10 m to 10 m");
        assertThatThrownBy(() -> new Teeth(5, 48))
                .hasMessage("Teeth: motor is 5.0, allowed: 6 to 400");
        assertThatThrownBy(() -> new ArmAngle(0))
                .hasMessage(
                        "ArmAngle: angle is 0.0 [SI], allowed: more than 0 deg, at most 89.9 deg");
        assertThatThrownBy(() -> new CrossBar(null, 1, null, null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("at");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "(0 mm, 5 m]; more than 0 mm, at most 5 m; 0.001; 0",
                "[0 mm, 5 m]; 0 mm to 5 m; 5; 5.0001",
                "[0 mm, 5 m); 0 mm to less than 5 m; 0; 5",
                "(0 mm, 5 m); more than 0 mm, less than 5 m; 4.9; 5"
            })
    void rangesReadAndSayTheirEnds(String text, String words, double inside, double outside) {
        Range range = Range.of(text, Dimension.LENGTH);
        assertThat(range.words()).isEqualTo(words);
        assertThat(range.holds(inside)).isTrue();
        assertThat(range.holds(outside)).isFalse();
        assertThat(range.holds(Double.NaN)).isFalse();
    }
}
