// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.screw;

import foldwright.elements.Domain;

/**
 * Geometry and friction law of a power thread: square, trapezoidal or Acme.
 *
 * <p>Torques follow Budynas &amp; Nisbett, <i>Shigley's Mechanical Engineering Design</i>, 9th ed.
 * 2011, Eqs. 8-1 to 8-6 pp. 415-417: Coulomb friction that acts at the pitch diameter, load along
 * the axis. The textbook takes the flank angle in the axial plane; {@link #withNormalPlaneFlanks()}
 * gives the thread with the angle seen square to the helix, which changes the raising torque by
 * less than 0.2 % for the sizes of the table. Use the starting friction for holding and the running
 * friction for torque; vibration lowers both.
 *
 * <p>"Raising" is motion against the load, "lowering" is motion with it. A load is given by its
 * size; the torque scales with it.
 *
 * @param majorDiameter d, outside diameter of the screw [m]
 * @param pitchDiameter d2, where the friction acts [m]
 * @param rootDiameter d3, smallest diameter of the screw [m]
 * @param pitch P, distance of neighbouring thread flanks [m]
 * @param starts n, number of threads side by side
 * @param halfFlankAngle alpha, half the angle between the flanks in the axial plane [rad]
 */
public record ScrewThread(
        double majorDiameter,
        double pitchDiameter,
        double rootDiameter,
        double pitch,
        int starts,
        double halfFlankAngle) {

    /** Half flank angle of ISO trapezoidal threads, 15 degrees (ISO 2901) [rad]. */
    public static final double ISO_TRAPEZOIDAL = Math.toRadians(15);

    /** Half flank angle of Acme threads, 14.5 degrees [rad]. */
    public static final double ACME = Math.toRadians(14.5);

    /**
     * Reserve asked before a thread is called self-locking: friction torque over driving torque.
     * Common practice, no source; vibration lowers friction.
     */
    public static final double SELF_LOCKING_RESERVE = 1.3;

    public ScrewThread {
        Domain.positive("major diameter", majorDiameter, "m");
        Domain.positive("pitch diameter", pitchDiameter, "m");
        Domain.positive("root diameter", rootDiameter, "m");
        Domain.positive("pitch", pitch, "m");
        Domain.atLeast("starts", starts, 1);
        Domain.within("half flank angle", halfFlankAngle, 0, Math.toRadians(45), "rad");
        if (!(rootDiameter < pitchDiameter && pitchDiameter < majorDiameter)) {
            throw new IllegalArgumentException(
                    "thread diameters are "
                            + rootDiameter
                            + ", "
                            + pitchDiameter
                            + ", "
                            + majorDiameter
                            + " m, allowed: root < pitch < major diameter");
        }
    }

    /**
     * ISO metric trapezoidal thread by its basic dimensions: d2 = d - P/2, d3 = d - P - 2 a_c (ISO
     * 2904:1977), a_c = 0.15 mm for pitches up to 1.5 mm, 0.25 mm from 2 to 5 mm, 0.5 mm from 6 to
     * 12 mm, 1 mm above (ISO 2901).
     *
     * @param majorDiameter d [m]
     * @param pitch P [m]
     * @param starts number of starts
     */
    public static ScrewThread trapezoidal(double majorDiameter, double pitch, int starts) {
        double crest = crestClearance(pitch);
        return new ScrewThread(
                majorDiameter,
                majorDiameter - pitch / 2,
                majorDiameter - pitch - 2 * crest,
                pitch,
                starts,
                ISO_TRAPEZOIDAL);
    }

    /** a_c of ISO 2901 [m]; a pitch between two rows takes the larger clearance. */
    private static double crestClearance(double pitch) {
        double slack = 1e-9;
        if (pitch <= 1.5e-3 + slack) {
            return 0.15e-3;
        }
        if (pitch <= 5e-3 + slack) {
            return 0.25e-3;
        }
        return pitch <= 12e-3 + slack ? 0.5e-3 : 1e-3;
    }

    /** Square thread of depth P/2 without clearance: d2 = d - P/2, root d - P. */
    public static ScrewThread square(double majorDiameter, double pitch, int starts) {
        return new ScrewThread(
                majorDiameter, majorDiameter - pitch / 2, majorDiameter - pitch, pitch, starts, 0);
    }

    /** Acme thread of depth P/2 without clearance: d2 = d - P/2, root d - P, 14.5 degree flanks. */
    public static ScrewThread acme(double majorDiameter, double pitch, int starts) {
        return new ScrewThread(
                majorDiameter,
                majorDiameter - pitch / 2,
                majorDiameter - pitch,
                pitch,
                starts,
                ACME);
    }

    /**
     * The same thread with its flank angle seen in the plane normal to the helix, tan(alpha_n) =
     * tan(alpha) cos(lambda).
     */
    public ScrewThread withNormalPlaneFlanks() {
        double normal = Math.atan(Math.tan(halfFlankAngle) * Math.cos(leadAngle()));
        return new ScrewThread(majorDiameter, pitchDiameter, rootDiameter, pitch, starts, normal);
    }

    /** l = n P, travel a turn [m]. */
    public double lead() {
        return starts * pitch;
    }

    /** lambda, helix angle at the pitch diameter [rad]. */
    public double leadAngle() {
        return Math.atan(tangentOfLead());
    }

    private double tangentOfLead() {
        return lead() / (Math.PI * pitchDiameter);
    }

    /** f / cos(alpha): friction as the inclined flank makes it felt [1]. */
    private double flankFriction(double friction) {
        return friction / Math.cos(halfFlankAngle);
    }

    /** rho' = atan(f / cos(alpha)), angle of friction of the inclined flank [rad]. */
    public double frictionAngle(double friction) {
        return Math.atan(flankFriction(friction));
    }

    /**
     * Torque of the thread alone to move against the load, (F d2/2) (l + pi f d2 s)/(pi d2 - f l s)
     * with s = 1/cos(alpha) (Shigley Eq. 8-5) [N·m].
     *
     * @param force size of the axial load [N]
     * @param friction coefficient in the thread [1]
     * @return infinite where friction locks the thread however hard it is turned
     */
    public double raiseTorque(double force, double friction) {
        double t = tangentOfLead();
        double f = flankFriction(friction);
        double opening = 1 - f * t;
        return opening > 0
                ? force * pitchDiameter / 2 * (t + f) / opening
                : Double.POSITIVE_INFINITY;
    }

    /** {@link #raiseTorque(double, double)} with the collar friction added [N·m]. */
    public double raiseTorque(double force, double friction, Collar collar) {
        return raiseTorque(force, friction) + collar.torque(force);
    }

    /**
     * Torque of the thread alone to move with the load, (F d2/2)(pi f d2 s - l)/(pi d2 + f l s)
     * (Shigley Eq. 8-2 with the flank angle) [N·m].
     *
     * @param force size of the axial load [N]
     * @param friction coefficient in the thread [1]
     * @return negative where the load drives the screw
     */
    public double lowerTorque(double force, double friction) {
        double t = tangentOfLead();
        double f = flankFriction(friction);
        return force * pitchDiameter / 2 * (f - t) / (1 + f * t);
    }

    /** {@link #lowerTorque(double, double)} with the collar friction added [N·m]. */
    public double lowerTorque(double force, double friction, Collar collar) {
        return lowerTorque(force, friction) + collar.torque(force);
    }

    /** Work out over work in when raising, F l/(2 pi T_R), collar not counted [1]. */
    public double efficiency(double friction) {
        double t = tangentOfLead();
        double f = flankFriction(friction);
        return Math.max(0, t * (1 - f * t) / (t + f));
    }

    /** Efficiency when raising with the collar counted (Shigley Eq. 8-4) [1]. */
    public double efficiency(double friction, Collar collar) {
        return lead() / (2 * Math.PI * raiseTorque(1, friction, collar));
    }

    /** Friction at which the thread alone just holds, tan(lambda) cos(alpha) [1]. */
    public double frictionAtSelfLocking() {
        return tangentOfLead() * Math.cos(halfFlankAngle);
    }

    /** Whether the thread alone holds its load at that friction; says nothing about vibration. */
    public boolean selfLocks(double friction) {
        return friction >= frictionAtSelfLocking();
    }

    /**
     * Friction present over friction needed [1]; call the thread self-locking from {@link
     * #SELF_LOCKING_RESERVE} on.
     */
    public double selfLockingMargin(double friction) {
        return friction / frictionAtSelfLocking();
    }

    /**
     * Margin with the collar counted: friction torques at the edge of running down over the driving
     * torque of a frictionless thread, both for the same load [1].
     */
    public double selfLockingMargin(double friction, Collar collar) {
        double driving = lead() / (2 * Math.PI);
        return (driving + lowerTorque(1, friction, collar)) / driving;
    }

    /** Torque with which the load turns the screw, thread alone; 0 if it locks [N·m]. */
    public double backDriveTorque(double force, double friction) {
        return Math.max(0, -lowerTorque(force, friction));
    }

    /** Share of the load's work that reaches the shaft when the load drives the screw [1]. */
    public double backDriveEfficiency(double friction) {
        return 2 * Math.PI * backDriveTorque(1, friction) / lead();
    }
}
