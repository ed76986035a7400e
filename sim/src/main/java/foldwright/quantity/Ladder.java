// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import java.util.List;

/** Units a quantity is printed in, largest first. */
final class Ladder {
    /** The first unit is used down to this number of it, the others down to 1. */
    static final double SMALLEST = 0.01;

    private Ladder() {}

    /** The units of a dimension; one alone where its prefix never changes. */
    static List<String> of(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> List.of("mm");
            case AREA -> List.of("mm²");
            case SECOND_MOMENT -> List.of("mm⁴");
            case MASS -> List.of("kg", "g", "mg");
            case TIME -> List.of("s", "ms", "µs", "ns");
            case FORCE -> List.of("N", "mN", "µN");
            case TORQUE -> List.of("N·m", "mN·m", "µN·m");
            case STIFFNESS -> List.of("N/mm", "N/m");
            case STRESS -> List.of("MPa", "kPa", "Pa");
            case ENERGY -> List.of("J", "mJ", "µJ");
            case POWER -> List.of("W", "mW", "µW");
            case VOLTAGE -> List.of("V", "mV", "µV");
            case CURRENT -> List.of("A", "mA", "µA");
            case RESISTANCE -> List.of("Ω", "mΩ");
            case INDUCTANCE -> List.of("mH", "µH", "nH");
            case SPEED -> List.of("mm/s", "µm/s");
            case COMPLIANCE -> List.of("mm/N", "µm/N");
            case ACCELERATION -> List.of("m/s²", "mm/s²");
            default -> List.of(dimension.usualUnit());
        };
    }
}
