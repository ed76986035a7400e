// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.mechanics.joint.PrescribedMotion;

/** Shaft angle that a commanded rise asks of one motor or crank, over time [rad]. */
final class RotorCommand implements PrescribedMotion {
    private final DrivenLift lift;
    private final DrivenLift.Rotor rotor;
    private final RiseCommand rise;
    private final double scale;

    RotorCommand(DrivenLift lift, DrivenLift.Rotor rotor, RiseCommand rise) {
        this.lift = lift;
        this.rotor = rotor;
        this.rise = rise;
        scale = rotor.sense() * lift.train().motorSpeed(1);
    }

    @Override
    public double value(double t) {
        return lift.rotorAngle(rotor, rise.height(t));
    }

    @Override
    public double rate(double t) {
        return scale * rotor.path().rate(rise.height(t)) * rise.rate(t);
    }

    @Override
    public double acceleration(double t) {
        double h = rise.height(t);
        double v = rise.rate(t);
        return scale
                * (rotor.path().acceleration(h) * v * v
                        + rotor.path().rate(h) * rise.acceleration(t));
    }
}
