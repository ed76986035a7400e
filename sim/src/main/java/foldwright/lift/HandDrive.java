// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static foldwright.lift.HandSum.degrees;
import static foldwright.lift.HandSum.mm;
import static foldwright.lift.HandSum.newton;
import static foldwright.lift.HandSum.newtonMetre;
import static foldwright.lift.HandSum.number;

/**
 * Hand sums of one lead screw: torque up and down, holding, and the motor behind a belt.
 *
 * <p>Symbols: P axial force of one screw, d2 pitch diameter, l lead, λ lead angle, tan λ = l/(π
 * d2), μ friction of the thread, α half flank angle, φ' = atan(μ/cos α).
 */
public final class HandDrive {
    private static final String SOURCE =
            "Budynas, Nisbett, Shigley's Mechanical Engineering Design, 9th ed. 2011, Eqs. 8-5 and"
                    + " 8-6, p. 417, in the tangent form";

    private final double pitchDiameter;
    private final double lead;
    private final double halfFlank;

    /**
     * @param pitchDiameter d2 [m]
     * @param lead l, travel a turn [m]
     * @param halfFlank α, 15° for ISO trapezoidal threads [rad]
     */
    public HandDrive(double pitchDiameter, double lead, double halfFlank) {
        if (!(pitchDiameter > 0) || !(lead > 0) || !(halfFlank >= 0 && halfFlank < 1)) {
            throw new IllegalArgumentException(
                    "needs d2 > 0, lead > 0, 0 <= half flank angle < 1 rad, got "
                            + pitchDiameter
                            + " m, "
                            + lead
                            + " m, "
                            + halfFlank
                            + " rad");
        }
        this.pitchDiameter = pitchDiameter;
        this.lead = lead;
        this.halfFlank = halfFlank;
    }

    private double leadAngle() {
        return Math.atan(lead / (Math.PI * pitchDiameter));
    }

    private double frictionAngle(double friction) {
        return Math.atan(friction / Math.cos(halfFlank));
    }

    /** T = P d2/2 tan(λ + φ'): torque that moves the nut against the force [N·m]. */
    public HandSum raiseTorque(double force, double friction) {
        double angle = leadAngle() + frictionAngle(friction);
        double value = force * pitchDiameter / 2 * Math.tan(angle);
        return new HandSum(
                "Screw torque against the load",
                "T = P d2/2 tan(λ + φ')",
                newton(force)
                        + " × "
                        + mm(pitchDiameter)
                        + "/2 × tan("
                        + degrees(leadAngle())
                        + " + "
                        + degrees(frictionAngle(friction))
                        + ")",
                value,
                newtonMetre(value),
                "Steady turning, end bearings left out.",
                SOURCE);
    }

    /** T = P d2/2 tan(φ' - λ): torque that lets the nut move with the force [N·m]. */
    public HandSum lowerTorque(double force, double friction) {
        double angle = frictionAngle(friction) - leadAngle();
        double value = force * pitchDiameter / 2 * Math.tan(angle);
        return new HandSum(
                "Screw torque with the load",
                "T = P d2/2 tan(φ' - λ)",
                newton(force)
                        + " × "
                        + mm(pitchDiameter)
                        + "/2 × tan("
                        + degrees(frictionAngle(friction))
                        + " - "
                        + degrees(leadAngle())
                        + ")",
                value,
                newtonMetre(value),
                "Below zero the load drives the screw. End bearings left out.",
                SOURCE);
    }

    /** μ = tan λ cos α: the thread friction below which the load turns the screw [1]. */
    public HandSum holdingFriction() {
        double value = Math.tan(leadAngle()) * Math.cos(halfFlank);
        return new HandSum(
                "Thread friction at which holding ends",
                "μ = tan λ cos α",
                "tan " + degrees(leadAngle()) + " × cos " + degrees(halfFlank),
                value,
                number(value),
                "Thread alone; collar, pins and the motor's detent help on top. Shaking lowers"
                        + " friction.",
                SOURCE);
    }

    /** η = tan λ/tan(λ + φ'): share of the screw's work that reaches the nut [1]. */
    public HandSum efficiency(double friction) {
        double value = Math.tan(leadAngle()) / Math.tan(leadAngle() + frictionAngle(friction));
        return new HandSum(
                "Efficiency of the thread",
                "η = tan λ/tan(λ + φ')",
                "tan "
                        + degrees(leadAngle())
                        + "/tan("
                        + degrees(leadAngle() + frictionAngle(friction))
                        + ")",
                value,
                number(value * 100) + " %",
                "Above 50 % the thread tends to run back by itself.",
                SOURCE);
    }

    /**
     * P = F f/n: what one of n equal screws pushes [N].
     *
     * @param foot F, force at the feet without friction [N]
     * @param factor f of the pins [1]
     * @param screws n
     */
    public static HandSum axialForce(double foot, double factor, int screws) {
        double value = foot * factor / screws;
        boolean one = screws == 1;
        return new HandSum(
                one ? "Force of the screw" : "Force of one of " + screws + " screws",
                one ? "P = F factor" : "P = F factor/" + screws,
                newton(foot) + " × " + number(factor) + (one ? "" : "/" + screws),
                value,
                newton(value),
                "Screws share alike; slider guides left out.",
                "");
    }

    /**
     * T_c = P μ_c d_c/2: what the collar of one screw takes [N·m].
     *
     * @param force P [N]
     * @param friction μ_c [1]
     * @param diameter d_c, mean diameter of the collar [m]
     */
    public static HandSum collarTorque(double force, double friction, double diameter) {
        double value = force * friction * diameter / 2;
        return new HandSum(
                "Torque of the collar",
                "T_c = P μ_c d_c/2",
                newton(force) + " × " + number(friction) + " × " + mm(diameter) + "/2",
                value,
                newtonMetre(value),
                "Rubbing on the mean diameter.",
                SOURCE);
    }

    /**
     * A reducing belt between source and screw.
     *
     * @param reduction i, motor turns a screw turn [1]
     * @param efficiency η of the belt stage [1]
     */
    public record Belt(double reduction, double efficiency) {
        /** Screws turned directly. */
        public static final Belt NONE = new Belt(1, 1);

        private boolean direct() {
            return reduction == 1 && efficiency == 1;
        }
    }

    /**
     * What one screw takes.
     *
     * @param thread T [N·m]
     * @param collar T_c, zero where it is left out [N·m]
     */
    public record ScrewTorque(double thread, double collar) {
        private String worked() {
            return collar > 0
                    ? "(" + newtonMetre(thread) + " + " + newtonMetre(collar) + ")"
                    : newtonMetre(thread);
        }
    }

    /**
     * T_m = k (T + T_c)/(i η): torque of one motor or crank [N·m].
     *
     * @param title e.g. "Motor torque"
     * @param screws k that it turns
     */
    public static HandSum sourceTorque(String title, int screws, ScrewTorque screw, Belt belt) {
        double value =
                screws * (screw.thread() + screw.collar()) / (belt.reduction() * belt.efficiency());
        boolean direct = belt.direct();
        String geared =
                direct
                        ? ""
                        : "/(" + number(belt.reduction()) + " × " + number(belt.efficiency()) + ")";
        return new HandSum(
                title,
                "T_m = "
                        + (screws == 1 ? "" : screws + " ")
                        + (screw.collar() > 0 ? "(T + T_c)" : "T")
                        + (direct ? "" : "/(i η)"),
                (screws == 1 ? "" : screws + " × ") + screw.worked() + geared,
                value,
                newtonMetre(value),
                "Steady turning; speeding the rotor up comes on top.",
                "Power balance");
    }
}
