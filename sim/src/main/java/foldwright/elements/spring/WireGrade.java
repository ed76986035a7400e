// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import static foldwright.elements.table.Table.GIGA;
import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A spring wire: elastic constants by diameter band (table {@code spring_materials.csv}) and least
 * strength.
 *
 * <p>Names: {@code "music wire A228"}, {@code "hard drawn A227"}, {@code "oil tempered A239"} (as
 * the table's source prints it), {@code "stainless 1.4310 EN 10270-3 (NS)"}, and {@code "EN 10270-1
 * SH"} with SL, SM, DM, DH, SH; the bare class, e.g. {@code "SH"}, and {@code "music wire"} are
 * understood too.
 *
 * @param name as printed
 * @param bands elastic constants, thin wire first
 * @param shearLimitShare static shear stress allowed over tensile strength [1]: 0.45 before set
 *     removal (Shigley Table 10-6) for ASTM grades, 0.56 uncorrected at solid length (EN 13906-1)
 *     for EN grades
 * @param strength least tensile strength; for 1.4310 that of its near equivalent ASTM A313 type 302
 */
public record WireGrade(
        String name, List<Band> bands, double shearLimitShare, WireStrength strength) {

    /**
     * Bending stress allowed in torsion springs over tensile strength (EN 13906-3, from memory)
     * [1].
     */
    public static final double BENDING_LIMIT_SHARE = 0.70;

    /**
     * Elastic constants of a range of wire diameters.
     *
     * @param thickest largest wire diameter of the band [m], infinite for the last
     * @param thinnest smallest wire diameter of the band [m]
     * @param youngsModulus E [Pa]
     * @param shearModulus G [Pa]
     * @param source where they come from
     */
    public record Band(
            double thinnest,
            double thickest,
            double youngsModulus,
            double shearModulus,
            String source) {}

    public WireGrade {
        bands = List.copyOf(bands);
    }

    /** The grade of that name, or empty. */
    public static Optional<WireGrade> find(String name) {
        Optional<WireGrade> exact = Shipped.CATALOG.find(name);
        return exact.isPresent() ? exact : Shipped.CATALOG.find(fullName(name));
    }

    /**
     * The grade of that name.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest names
     */
    public static WireGrade get(String name) {
        return find(name).orElseGet(() -> Shipped.CATALOG.get(name));
    }

    /** All grades with their names. */
    public static Catalog<WireGrade> catalog() {
        return Shipped.CATALOG;
    }

    private static String fullName(String name) {
        return switch (name.strip().toUpperCase(Locale.ROOT)) {
            case "SL", "SM", "SH", "DM", "DH" -> "EN 10270-1 " + name.strip();
            case "MUSIC WIRE" -> "music wire A228";
            case "HARD DRAWN" -> "hard drawn A227";
            case "OIL TEMPERED" -> "oil tempered A239";
            case "1.4310", "STAINLESS" -> "stainless 1.4310 EN 10270-3 (NS)";
            default -> name;
        };
    }

    /**
     * E at that wire diameter [Pa]. Between two bands, and outside all, the nearest band counts: E
     * and G vary by 5 % over all of them.
     */
    public double youngsModulus(double wireDiameter) {
        return band(wireDiameter).youngsModulus();
    }

    /** G at that wire diameter, as {@link #youngsModulus} [Pa]. */
    public double shearModulus(double wireDiameter) {
        return band(wireDiameter).shearModulus();
    }

    /** Least tensile strength [Pa]; refuses diameters the grade is not made in. */
    public double minimumTensile(double wireDiameter) {
        return strength.minimumTensile(wireDiameter);
    }

    /** Static shear stress allowed without factor, set not removed [Pa]. */
    public double shearLimit(double wireDiameter) {
        return shearLimitShare * minimumTensile(wireDiameter);
    }

    /** Bending stress allowed in a torsion spring [Pa]. */
    public double bendingLimit(double wireDiameter) {
        return BENDING_LIMIT_SHARE * minimumTensile(wireDiameter);
    }

    private Band band(double wireDiameter) {
        for (Band band : bands) {
            if (wireDiameter <= band.thickest()) {
                return band;
            }
        }
        return bands.get(bands.size() - 1);
    }

    private static Band bandOf(Table.Row row) {
        String range = row.text("d_range_mm");
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        if (range.startsWith("<")) {
            high = Double.parseDouble(range.substring(1)) * MILLI;
        } else if (range.startsWith(">")) {
            low = Double.parseDouble(range.substring(1)) * MILLI;
        } else if (range.contains("-")) {
            String[] ends = range.split("-");
            low = Double.parseDouble(ends[0]) * MILLI;
            high = Double.parseDouble(ends[1]) * MILLI;
        }
        return new Band(
                low,
                high,
                row.number("E_GPa", GIGA),
                row.number("G_GPa", GIGA),
                row.text("source"));
    }

    private static WireStrength strengthOf(String name) {
        String key = name.substring(name.lastIndexOf(' ') + 1);
        return switch (key) {
            case "A228" -> WireStrength.MUSIC_A228;
            case "A227" -> WireStrength.HARD_DRAWN_A227;
            case "A239" -> WireStrength.OIL_TEMPERED_A229;
            case "(NS)" -> WireStrength.STAINLESS_302;
            default -> WireStrength.valueOf(key);
        };
    }

    /** Read when the first grade is asked for. */
    private static final class Shipped {
        private static final String EN_CLASSES = "EN 10270-1 SL SM SH DM DH";
        private static final Catalog<WireGrade> CATALOG =
                Catalog.of("spring wire", entries(), WireGrade::name, Catalog::plain);

        private static List<WireGrade> entries() {
            Map<String, List<Band>> bands = new LinkedHashMap<>();
            Map<String, Double> limits = new LinkedHashMap<>();
            for (Table.Row row : Table.shipped("spring_materials.csv").rows()) {
                for (String name : names(row.text("material"))) {
                    bands.computeIfAbsent(name, key -> new ArrayList<>()).add(bandOf(row));
                    limits.put(name, row.number("shear_limit_percent_of_Rm", 0.01));
                }
            }
            List<WireGrade> grades = new ArrayList<>();
            bands.forEach(
                    (name, list) ->
                            grades.add(
                                    new WireGrade(name, list, limits.get(name), strengthOf(name))));
            return grades;
        }

        private static List<String> names(String material) {
            if (!material.equals(EN_CLASSES)) {
                return List.of(material);
            }
            List<String> names = new ArrayList<>();
            for (String grade : List.of("SL", "SM", "SH", "DM", "DH")) {
                names.add("EN 10270-1 " + grade);
            }
            return names;
        }
    }
}
