// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/** Prescribes a coordinate; its multiplier is the driving force [N] or torque [N m]. */
public final class Driver extends ScalarRow {
    private PrescribedMotion motion;
    private boolean engaged = true;
    private double time;

    public Driver(String name, Coordinate coordinate, PrescribedMotion motion) {
        super(name, coordinate, 1);
        this.motion = motion;
        at(0);
    }

    /** Follows another motion from now on. */
    public void follow(PrescribedMotion next) {
        motion = next;
        at(time);
    }

    /** Takes part. */
    public void engage() {
        engaged = true;
    }

    /** Lets go: the coordinate is free, the multiplier zero. */
    public void release() {
        engaged = false;
    }

    @Override
    public boolean engaged() {
        return engaged;
    }

    /** Sets the target for time {@code t} [s]; called by the solver. */
    public void at(double t) {
        time = t;
        aim(motion.value(t));
    }

    /** Prescribed rate at the time set last [m/s or rad/s]. */
    public double rate() {
        return motion.rate(time);
    }

    /** Prescribed acceleration at the time set last [m/s2 or rad/s2]. */
    public double acceleration() {
        return motion.acceleration(time);
    }
}
