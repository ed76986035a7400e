// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import foldwright.elements.Domain;
import java.util.Objects;

/**
 * Force proportional to the deflection, F = R (x_0 - x), with a stop at the limit: cylindrical
 * springs over length, torsion springs over angle.
 */
public final class LinearLaw implements SpringLaw {
    private final double rate;
    private final double free;
    private final double limit;
    private final double stopRate;
    private final double limitForce;
    private final double limitEnergy;
    private final double pull;
    private final Measure measure;

    /**
     * @param rate R [N/m or N·m/rad]
     * @param free x_0, coordinate without load [m or rad]
     * @param limit coordinate where the coils are solid, below {@code free} [m or rad]
     * @param attachment whether it pulls beyond {@code free}
     * @param measure length or angle
     */
    public LinearLaw(
            double rate, double free, double limit, Attachment attachment, Measure measure) {
        this.rate = Domain.positive("spring rate", rate, "N/m");
        this.free = Domain.finite("free coordinate", free, "m");
        this.limit = Domain.finite("limit coordinate", limit, "m");
        if (!(limit < free)) {
            throw new IllegalArgumentException(
                    "limit coordinate is " + limit + ", allowed: below the free one, " + free);
        }
        this.measure = Objects.requireNonNull(measure, "measure");
        this.stopRate = STOP_RATIO * rate;
        this.limitForce = rate * (free - limit);
        this.limitEnergy = limitForce * (free - limit) / 2;
        this.pull = Objects.requireNonNull(attachment) == Attachment.ATTACHED ? rate : 0;
    }

    /** R, the rate in normal use [N/m or N·m/rad]. */
    public double rate() {
        return rate;
    }

    @Override
    public double force(double x) {
        double push = free - x;
        if (push < 0) {
            return pull * push;
        }
        return x >= limit ? rate * push : limitForce + stopRate * (limit - x);
    }

    @Override
    public double stiffness(double x) {
        if (x > free) {
            return pull;
        }
        return x >= limit ? rate : stopRate;
    }

    @Override
    public double energy(double x) {
        double push = free - x;
        if (push < 0) {
            return pull * push * push / 2;
        }
        if (x >= limit) {
            return rate * push * push / 2;
        }
        double over = limit - x;
        return limitEnergy + over * (limitForce + stopRate * over / 2);
    }

    @Override
    public void evaluate(double x, SpringPoint out) {
        out.set(force(x), stiffness(x), energy(x));
    }

    @Override
    public double freeCoordinate() {
        return free;
    }

    @Override
    public double limitCoordinate() {
        return limit;
    }

    @Override
    public Measure measure() {
        return measure;
    }
}
