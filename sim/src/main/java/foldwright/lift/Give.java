// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.drive.Screw;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.SliderEnd;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.PairJoint;

/**
 * How much pins, guides and stuck friction yield.
 *
 * <p>{@link #STATED} takes the stiffness the machine file gives and leaves all else ideal; {@link
 * #IDEAL} leaves everything ideal, for comparison with closed forms.
 */
enum Give {
    STATED,
    IDEAL;

    /**
     * Compliance of ideal locks: [m/N] against travel, [rad/(N·m)] against turning. Ten times
     * smaller ones bring noise into redundant loads of some lifts; these change the foot force of
     * the van bench at 6 degrees by less than 1e-6.
     */
    private static final double IDEAL_TURN = 1e-6;

    private static final double IDEAL_SHIFT = 3e-11;

    void pin(PairJoint joint, Pin pin) {
        soften(joint, Freedom.TZ, IDEAL_SHIFT);
        soften(joint, Freedom.TX, IDEAL_SHIFT);
        soften(joint, Freedom.TY, IDEAL_SHIFT);
        soften(joint, Freedom.RX, IDEAL_TURN);
        soften(joint, Freedom.RY, IDEAL_TURN);
        if (this == IDEAL) {
            return;
        }
        pin.stiffness()
                .ifPresent(
                        k -> {
                            soften(joint, Freedom.TX, 1 / k);
                            soften(joint, Freedom.TY, 1 / k);
                        });
        pin.tiltStiffness()
                .ifPresent(
                        k -> {
                            soften(joint, Freedom.RX, 1 / k);
                            soften(joint, Freedom.RY, 1 / k);
                        });
    }

    /** Guide axes: z along the machine, x to the back, so y is down or up. */
    void guide(PairJoint joint, SliderEnd end) {
        soften(joint, Freedom.TX, IDEAL_SHIFT);
        soften(joint, Freedom.TY, IDEAL_SHIFT);
        soften(joint, Freedom.RX, IDEAL_TURN);
        soften(joint, Freedom.RY, IDEAL_TURN);
        soften(joint, Freedom.RZ, IDEAL_TURN);
        if (this == IDEAL) {
            return;
        }
        end.stiffness()
                .ifPresent(
                        k -> {
                            soften(joint, Freedom.TX, 1 / k);
                            soften(joint, Freedom.TY, 1 / k);
                        });
    }

    void screw(Driver driver, Screw screw) {
        driver.soften(0, IDEAL_SHIFT, 0);
        if (this == STATED) {
            screw.endStiffness().ifPresent(k -> driver.soften(0, 1 / k, 0));
        }
    }

    /** Elastic turn of a stuck pin [rad/(N·m)]. */
    double turnBristle() {
        return 1e-6;
    }

    /** Elastic travel of a stuck slider [m/N]. */
    double slideBristle() {
        return 1e-9;
    }

    private static void soften(PairJoint joint, Freedom freedom, double compliance) {
        joint.soften(joint.row(freedom), compliance, 0);
    }
}
