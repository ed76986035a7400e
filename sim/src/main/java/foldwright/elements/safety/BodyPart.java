// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.safety;

/**
 * Parts of the body with a minimum gap in ISO 13854, and the opening from which each can get in.
 *
 * <p>Openings: upper limb from the slot rows of ISO 13857:2019 Table 4 (finger above 4 mm, hand
 * above 12 mm, arm above 20 mm; head above the last row, 120 mm); lower limb and body from the
 * lower limb table of the same standard, from memory.
 */
public enum BodyPart {
    FINGER("finger", 4e-3),
    TOES("toes", 5e-3),
    HAND("hand, wrist, fist", 12e-3),
    ARM("arm", 20e-3),
    FOOT("foot", 35e-3),
    LEG("leg", 80e-3),
    HEAD("head", 120e-3),
    BODY("body", 180e-3);

    private final String tableName;
    private final double entryOpening;

    BodyPart(String tableName, double entryOpening) {
        this.tableName = tableName;
        this.entryOpening = entryOpening;
    }

    /** How the table writes it. */
    public String tableName() {
        return tableName;
    }

    /** The part can get into a gap wider than this [m]. */
    public double entryOpening() {
        return entryOpening;
    }
}
