// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import foldwright.elements.Domain;

/**
 * Least tensile strength of spring wire over its diameter.
 *
 * <p>EN 10270-1 grades: a - b lg(d) with d in mm and the result in MPa (formulas from memory; SM
 * agrees within 5 MPa with a published reproduction of the standard's table from 0.3 to 10 mm).
 * ASTM grades: A/d^m (Shigley 9th ed. Table 10-4; music wire seen, the others from memory).
 */
public enum WireStrength {
    SL(Form.LOGARITHM, 1720, 660, 1, 10),
    SM(Form.LOGARITHM, 1980, 740, 0.3, 20),
    DM(Form.LOGARITHM, 1980, 740, 0.3, 20),
    SH(Form.LOGARITHM, 2220, 820, 0.3, 20),
    DH(Form.LOGARITHM, 2220, 820, 0.05, 20),
    MUSIC_A228(Form.POWER, 2211, 0.145, 0.1, 6.5),
    HARD_DRAWN_A227(Form.POWER, 1783, 0.19, 0.7, 12.7),
    OIL_TEMPERED_A229(Form.POWER, 1855, 0.187, 0.5, 12.7),
    STAINLESS_302(Form.POWER, 1867, 0.146, 0.3, 2.5);

    private enum Form {
        LOGARITHM,
        POWER
    }

    private static final double MM = 1e-3;
    private static final double MPA = 1e6;

    private final Form form;
    private final double a;
    private final double b;
    private final double least;
    private final double most;

    WireStrength(Form form, double a, double b, double leastMm, double mostMm) {
        this.form = form;
        this.a = a;
        this.b = b;
        this.least = leastMm * MM;
        this.most = mostMm * MM;
    }

    /** Smallest wire diameter the formula is given for [m]. */
    public double leastDiameter() {
        return least;
    }

    /** Largest wire diameter the formula is given for [m]. */
    public double mostDiameter() {
        return most;
    }

    /**
     * R_m,min, or S_ut of the ASTM grades [Pa].
     *
     * @param wireDiameter d [m]
     * @throws IllegalArgumentException outside the diameters of the grade
     */
    public double minimumTensile(double wireDiameter) {
        Domain.within("wire diameter of grade " + name(), wireDiameter, least, most, "m");
        double mm = wireDiameter / MM;
        double mpa = form == Form.LOGARITHM ? a - b * Math.log10(mm) : a / Math.pow(mm, b);
        return mpa * MPA;
    }
}
