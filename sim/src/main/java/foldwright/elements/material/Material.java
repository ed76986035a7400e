// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.material;

import static foldwright.elements.table.Table.GIGA;
import static foldwright.elements.table.Table.MEGA;
import static foldwright.elements.table.Table.ONE;

import foldwright.elements.Domain;
import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An isotropic elastic material, from table {@code materials.csv} or by numbers.
 *
 * @param name as printed, e.g. "aluminium 6061-T6"
 * @param elastic how it gives
 * @param density [kg/m³]
 * @param strength yield or, for plastics, tensile strength [Pa]; empty where the table has none
 * @param source where the row comes from
 * @param caution what to tell the user with it, empty if nothing
 */
public record Material(
        String name,
        Elastic elastic,
        double density,
        OptionalDouble strength,
        String source,
        String caution) {

    /**
     * Elastic constants.
     *
     * @param youngsModulus E [Pa]
     * @param shearModulus G [Pa]
     * @param poissonsRatio nu [1]; printed parts are not isotropic, so G is not E/(2(1+nu)) in the
     *     table
     */
    public record Elastic(double youngsModulus, double shearModulus, double poissonsRatio) {
        public Elastic {
            Domain.positive("Young's modulus", youngsModulus, "Pa");
            Domain.positive("shear modulus", shearModulus, "Pa");
            Domain.within("Poisson's ratio", poissonsRatio, -1, 0.5, "1");
        }

        /** Both moduli times a ratio [1]. */
        Elastic times(double ratio) {
            return new Elastic(youngsModulus * ratio, shearModulus * ratio, poissonsRatio);
        }
    }

    /** Steady stress over strength from which a printed part gets a caution; no source. */
    public static final double PRINTED_STEADY_SHARE = 0.2;

    /** Strength of a printed part across its layers over that along them; no source. */
    public static final double ACROSS_LAYERS_SHARE = 0.5;

    public Material {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(elastic, "elastic");
        Domain.positive("density", density, "kg/m3");
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(caution, "caution");
    }

    /** E [Pa]. */
    public double youngsModulus() {
        return elastic.youngsModulus();
    }

    /** G [Pa]. */
    public double shearModulus() {
        return elastic.shearModulus();
    }

    /** Poisson's ratio [1]. */
    public double poissonsRatio() {
        return elastic.poissonsRatio();
    }

    /** The material of that name, or empty. */
    public static Optional<Material> find(String name) {
        return Shipped.CATALOG.find(name);
    }

    /**
     * The material of that name.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest names
     */
    public static Material get(String name) {
        return Shipped.CATALOG.get(name);
    }

    /** All materials with their names. */
    public static Catalog<Material> catalog() {
        return Shipped.CATALOG;
    }

    /** Whether the table's row is a printed part, for which creep and layers matter. */
    public boolean printed() {
        return name.contains("printed");
    }

    /**
     * The material under a load that stays on: both moduli times the creep ratio, in the formulas
     * of elasticity (pseudo-elastic method of plastics design).
     *
     * @param creepRatio E(t)/E(0), e.g. 0.4 after 1000 h for printed PLA (common practice, no
     *     source) [1]
     */
    public Material crept(double creepRatio) {
        Domain.within("creep ratio", creepRatio, 1e-3, 1, "1");
        return new Material(name, elastic.times(creepRatio), density, strength, source, caution);
    }

    private static Material of(Table.Row row) {
        String caution = row.text("caution");
        return new Material(
                row.text("material"),
                new Elastic(
                        row.number("E_GPa", GIGA),
                        row.number("G_GPa", GIGA),
                        row.number("nu", ONE)),
                row.number("density_kg_m3", ONE),
                row.optional("yield_or_strength_MPa", MEGA),
                row.text("source"),
                caution.equals("-") ? "" : caution);
    }

    /** Read when the first material is asked for. */
    private static final class Shipped {
        private static final Catalog<Material> CATALOG =
                Catalog.of("material", entries(), Material::name, Catalog::plain);

        private static List<Material> entries() {
            return Table.shipped("materials.csv").rows().stream().map(Material::of).toList();
        }
    }
}
