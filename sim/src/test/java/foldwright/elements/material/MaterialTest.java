// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Materials, friction and allowable loads as their tables give them. */
class MaterialTest {
    @Test
    void metalsObeyIsotropicElasticity() {
        // G = E/(2(1+nu)) within the rounding of handbook values
        for (Material m : Material.catalog().all()) {
            if (!m.printed()) {
                double shear = m.youngsModulus() / (2 * (1 + m.poissonsRatio()));
                assertThat(m.shearModulus()).as(m.name()).isCloseTo(shear, within(0.03 * shear));
            }
        }
    }

    @Test
    void valuesComeWithTheirUnits() {
        Material steel = Material.get("steel, carbon, general");
        // Shigley Table A-5
        assertThat(steel.youngsModulus()).isEqualTo(207e9);
        assertThat(steel.shearModulus()).isCloseTo(79.3e9, within(1.0));
        assertThat(steel.strength().orElseThrow()).isEqualTo(235e6);
        assertThat(Material.get("aluminium, general").strength()).isEmpty();
        assertThat(Material.get("PLA, printed").caution()).contains("creeps");
        assertThat(steel.caution()).isEmpty();
    }

    @Test
    void creepLowersBothModuli() {
        Material pla = Material.get("PLA, printed");
        Material later = pla.crept(0.4);
        assertThat(later.youngsModulus()).isCloseTo(0.4 * pla.youngsModulus(), within(1.0));
        assertThat(later.shearModulus()).isCloseTo(0.4 * pla.shearModulus(), within(1.0));
        assertThatThrownBy(() -> pla.crept(1.5)).hasMessageContaining("creep ratio");
    }

    @Test
    void frictionIsARange() {
        for (FrictionPair pair : FrictionPair.catalog().all()) {
            assertThat(pair.low()).as(pair.name()).isPositive().isLessThanOrEqualTo(pair.high());
            assertThat(pair.middle()).isBetween(pair.low(), pair.high());
        }
        // Shigley 9th ed. Table 8-5
        FrictionPair oiled = FrictionPair.get("screw thread, steel, bronze, machine oil");
        assertThat(oiled.low()).isEqualTo(0.10);
        assertThat(oiled.high()).isEqualTo(0.16);
        assertThat(FrictionPair.find("screw thread, wood, wood, dry")).isEmpty();
    }

    @Test
    void plasticsCarryLessForLong() {
        for (PlasticAllowable row : PlasticAllowable.catalog().all()) {
            assertThat(row.longTerm()).isLessThan(row.shortTerm());
        }
        assertThat(PlasticAllowable.find("pin in printed hole, static, PLA")).isPresent();
        assertThatThrownBy(() -> PlasticAllowable.get("pin in printed hole, static, PVC"))
                .hasMessageContaining("pin in printed hole, static, PLA");
    }
}
