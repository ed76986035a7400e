// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.column;

/**
 * How the two ends of a shaft are held, the nut counting as one end.
 *
 * <p>Buckling end constants: theory 1/4, 1, 2, 4 and recommended 1/4, 1, 1.2, 1.2 (Shigley 9th ed.
 * Table 4-2 p. 183). Whirling: first root of the Euler-Bernoulli beam. The two trade constants are
 * as printed on public screw-maker pages; the metric one already holds a factor of about 0.8.
 */
public enum EndFixity {
    FIXED_FREE(0.25, 0.25, 1.8751040687119611, 3.4, 0.36),
    PINNED_PINNED(1, 1, Math.PI, 9.7, 1),
    FIXED_PINNED(2, 1.2, 3.9266023120479188, 15.1, 1.47),
    FIXED_FIXED(4, 1.2, 4.730040744862704, 21.9, 2.23);

    private final double theory;
    private final double recommended;
    private final double whirlRoot;
    private final double metricTrade;
    private final double inchTrade;

    EndFixity(
            double theory,
            double recommended,
            double whirlRoot,
            double metricTrade,
            double inchTrade) {
        this.theory = theory;
        this.recommended = recommended;
        this.whirlRoot = whirlRoot;
        this.metricTrade = metricTrade;
        this.inchTrade = inchTrade;
    }

    /** End constant C of the ideal column [1]. */
    public double theory() {
        return theory;
    }

    /** End constant C to design with, as real ends are never rigid [1]. */
    public double recommended() {
        return recommended;
    }

    /** (beta L)^2 of the first bending mode [1]. */
    public double whirlConstant() {
        return whirlRoot * whirlRoot;
    }

    /** f_c of the trade form n = f_c d/L^2 x 10^7 in mm and 1/min; includes about 0.8. */
    double metricTrade() {
        return metricTrade;
    }

    /** C_s of the trade form n = C_s x 4.76e6 d/L^2 in inches and 1/min, before its 0.8. */
    double inchTrade() {
        return inchTrade;
    }
}
