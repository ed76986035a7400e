// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.screw;

/**
 * Stresses at the root of a loaded thread (Shigley 9th ed. Eqs. 8-7 to 8-14 pp. 418-420 and Example
 * 8-1): the shaft carries torsion and thrust, the most loaded turn 0.38 of the thrust.
 *
 * <p>Formulas for a square thread of height P/2; for trapezoidal threads they err on the safe side
 * in root bending because the root is wider than P/2.
 *
 * @param bodyTorsion 16 T/(pi d_r^3) [Pa]
 * @param bodyAxial thrust stress, negative in compression, 4 F/(pi d_r^2) [Pa]
 * @param bearing flank pressure on the most loaded turn as negative stress, 2 F_1/(pi d2 P) [Pa]
 * @param rootBending 6 F_1/(pi d_r P) at the root of that turn [Pa]
 */
public record ThreadStress(
        double bodyTorsion, double bodyAxial, double bearing, double rootBending) {

    /** Share of the load on the most loaded turn (Shigley 9th ed. p. 419). */
    public static final double FIRST_TURN_SHARE = 0.38;

    /**
     * Stresses of a screw pushed by {@code force} and turned by {@code torque}.
     *
     * @param force thrust, positive in compression [N]
     * @param torque torque in the section, raise torque with collar as a rule [N·m]
     */
    public static ThreadStress of(ScrewThread thread, double force, double torque) {
        double root = thread.rootDiameter();
        double first = FIRST_TURN_SHARE * force;
        return new ThreadStress(
                16 * torque / (Math.PI * root * root * root),
                -4 * force / (Math.PI * root * root),
                -2 * first / (Math.PI * thread.pitchDiameter() * thread.pitch()),
                6 * first / (Math.PI * root * thread.pitch()));
    }

    /** Distortion-energy stress at the root: bending, thrust and torsion together [Pa]. */
    public double vonMises() {
        double x = rootBending;
        double y = bodyAxial;
        double direct = (x - y) * (x - y) + y * y + x * x;
        return Math.sqrt(direct / 2 + 3 * bodyTorsion * bodyTorsion);
    }

    /** Half the difference of the outer two principal stresses at the root [Pa]. */
    public double maximumShear() {
        double middle = bodyAxial / 2;
        double radius = Math.hypot(middle, bodyTorsion);
        double high = Math.max(rootBending, middle + radius);
        double low = Math.min(rootBending, middle - radius);
        return (high - low) / 2;
    }
}
