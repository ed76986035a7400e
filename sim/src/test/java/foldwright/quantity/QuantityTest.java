// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.EnumSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Quantities as people write them. */
class QuantityTest {
    /**
     * Sizes of units in SI: BIPM, The International System of Units, 9th ed. 2019, Table 4 (derived
     * units), Table 7 (prefixes) and Table 8 (minute 60 s, hour 3600 s, degree pi/180 rad, tonne
     * 1000 kg); bar 100 kPa and revolution 2 pi rad from NIST SP 811 (2008), appendix B.8. The
     * expected values are worked out here by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "240 mm, LENGTH, 0.24",
        "0.19 m, LENGTH, 0.19",
        "5.7 cm, LENGTH, 0.057",
        "4 um, LENGTH, 0.000004",
        "4 µm, LENGTH, 0.000004",
        "4 μm, LENGTH, 0.000004",
        "1.6 kg, MASS, 1.6",
        "250 g, MASS, 0.25",
        "0.01 t, MASS, 10",
        "0.18 N·m, TORQUE, 0.18",
        "0.18 N*m, TORQUE, 0.18",
        "180 mN*m, TORQUE, 0.18",
        "18 N*cm, TORQUE, 0.18",
        "12 N/mm, STIFFNESS, 12000",
        "0.155 N/mm, STIFFNESS, 155",
        "3600 N*m/rad, TORSION_STIFFNESS, 3600",
        "4 mm/s, SPEED, 0.004",
        "240 mm/min, SPEED, 0.004",
        "3 m/s2, ACCELERATION, 3",
        "3 m/s^2, ACCELERATION, 3",
        "3 m/s², ACCELERATION, 3",
        "80 m/s3, JERK, 80",
        "58 g*cm2, INERTIA, 0.0000058",
        "58 g·cm², INERTIA, 0.0000058",
        "8.3 g/m, MASS_PER_LENGTH, 0.0083",
        "2.70 g/cm3, DENSITY, 2700",
        "70 GPa, STRESS, 70000000000",
        "14 N/mm2, STRESS, 14000000",
        "2 bar, STRESS, 200000",
        "1.65 ohm, RESISTANCE, 1.65",
        "1.65 Ω, RESISTANCE, 1.65",
        "3.2 mH, INDUCTANCE, 0.0032",
        "2048 mm4, SECOND_MOMENT, 0.000000002048",
        "25 %, RATIO, 0.25",
        "0.15, RATIO, 0.15",
        "1.5e-1, RATIO, 0.15",
        "2 h, TIME, 7200",
        "1.74 J, ENERGY, 1.74",
        "11 N*m, ENERGY, 11"
    })
    void decimalUnitsConvertWithoutRounding(String text, Dimension dimension, BigDecimal si)
            throws NotAQuantity {
        // the double nearest to the decimal number, not one a bit away
        assertThat(Quantity.read(text, dimension)).isEqualTo(si.doubleValue());
    }

    @ParameterizedTest
    @CsvSource({
        "180 deg, ANGLE, 3.141592653589793",
        "180°, ANGLE, 3.141592653589793",
        "0.5 rev, ANGLE, 3.141592653589793",
        "2 turns, ANGLE, 12.566370614359172",
        "60 rpm, ROTATION_SPEED, 6.283185307179586",
        "60 rev/min, ROTATION_SPEED, 6.283185307179586",
        "4 rev/s, ROTATION_SPEED, 25.132741228718345",
        "90 deg/s, ROTATION_SPEED, 1.5707963267948966",
        "1 N*m/deg, TORSION_STIFFNESS, 57.29577951308232"
    })
    void degreesAndTurnsConvertToRadians(String text, Dimension dimension, double si)
            throws NotAQuantity {
        // one or two roundings of a double
        assertThat(Quantity.read(text, dimension)).isCloseTo(si, within(2 * Math.ulp(si)));
    }

    @ParameterizedTest
    @CsvSource({
        "−4.6 kg, -4.6",
        "'+4.6 kg', 4.6",
        "4.6\u00A0kg, 4.6",
        "'  4.6   kg ', 4.6",
        "4.6kg, 4.6"
    })
    void signsAndSpacesAreTakenAsPeopleTypeThem(String text, double kilograms) throws NotAQuantity {
        assertThat(Quantity.read(text, Dimension.MASS)).isEqualTo(kilograms);
    }

    @ParameterizedTest
    @CsvSource({
        "190 kg, LENGTH, WRONG_DIMENSION, kg",
        "3600 N*m, TORSION_STIFFNESS, WRONG_DIMENSION, N·m",
        "5 mm, ANGLE, WRONG_DIMENSION, mm",
        "5 mm, RATIO, WRONG_DIMENSION, mm",
        "190, LENGTH, NO_UNIT, 1",
        "190 mmm, LENGTH, UNKNOWN_UNIT, mmm",
        "7.5 in, LENGTH, UNKNOWN_UNIT, in",
        "0.4 Nm, TORQUE, UNKNOWN_UNIT, Nm",
        "4 m/, SPEED, UNKNOWN_UNIT, m/",
        "4 mm5, LENGTH, UNKNOWN_UNIT, mm5",
        "'1,5 mm', LENGTH, DECIMAL_COMMA, ''",
        "mm, LENGTH, NO_NUMBER, ''",
        "'', LENGTH, NO_NUMBER, ''",
        "NaN mm, LENGTH, NO_NUMBER, ''",
        "- mm, LENGTH, NO_NUMBER, ''",
        "1e999999999999 mm, LENGTH, NO_NUMBER, ''",
        "1e999999 mm, LENGTH, TOO_LARGE, ''"
    })
    void whatIsNoQuantityOfThatKindIsRefusedWithTheReason(
            String text, Dimension dimension, NotAQuantity.Reason reason, String unit) {
        NotAQuantity refused =
                catchThrowableOfType(NotAQuantity.class, () -> Quantity.read(text, dimension));
        assertThat(refused.reason()).isEqualTo(reason);
        assertThat(refused.unit()).isEqualTo(unit);
        assertThat(refused).hasMessageStartingWith("\"" + text + "\" ");
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionIsWrittenInAUnitOfItsOwn(Dimension dimension) {
        assertThat(Units.of(dimension.usualUnit()).measures(dimension)).isTrue();
    }

    /** Torque and energy, frequency and rotation speed: only the first pair shares its units. */
    @Test
    void onlyTorqueAndEnergyShareTheirUnits() {
        EnumSet<Dimension> all = EnumSet.allOf(Dimension.class);
        all.remove(Dimension.ENERGY);
        assertThat(all.stream().map(Dimension::exponents).distinct().count()).isEqualTo(all.size());
    }

    @Test
    void programTextsThatAreWrongStopTheProgram() {
        assertThatThrownBy(() -> Units.of("furlong")).hasMessage("no such unit: furlong");
        assertThatThrownBy(() -> Quantity.of("5 kg", Dimension.LENGTH))
                .hasMessage("\"5 kg\" has a unit of another dimension");
    }

    @Property(seed = "20261125")
    void noTextEscapesAsAnotherException(@ForAll @StringLength(max = 30) String text) {
        try {
            assertThat(Quantity.read("1" + text).si()).isNotNaN();
        } catch (NotAQuantity e) {
            assertThat(e.reason()).isNotNull();
        }
    }

    @Property(seed = "20261125")
    void aNumberSurvivesItsUnit(@ForAll double value) throws NotAQuantity {
        if (Double.isFinite(value) && Math.abs(value) > 1e-250 && Math.abs(value) < 1e250) {
            for (String unit : new String[] {"mm", "deg", "g*cm2", "GPa", "rpm"}) {
                Unit known = Units.of(unit);
                double back = known.toSi(BigDecimal.valueOf(known.fromSi(value)));
                // conversion there and back rounds three or four times
                assertThat(back).isCloseTo(value, within(4 * Math.ulp(value)));
            }
        }
    }
}
