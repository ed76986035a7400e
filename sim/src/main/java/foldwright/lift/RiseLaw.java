// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.drive.Rise;
import foldwright.machine.drive.RisePoint;
import foldwright.machine.drive.RiseProfile;
import foldwright.machine.drive.SteadyRise;
import foldwright.machine.drive.SteadyTurning;
import java.util.List;

/** How fast the deck is asked to move at each height, as the machine file states it. */
public final class RiseLaw {
    private final Rise rise;
    private final DriveTrain train;

    public RiseLaw(Rise rise, DriveTrain train) {
        this.rise = rise;
        this.train = train;
    }

    /**
     * Asked deck speed [m/s].
     *
     * @param height pivot height [m]
     * @param nutPerHeight travel of a nut a metre of height [1], positive
     */
    public double deckSpeed(double height, double nutPerHeight) {
        if (rise instanceof SteadyRise steady) {
            return steady.speed();
        }
        if (rise instanceof SteadyTurning turning) {
            return turning.speed() / train.motorSpeed(nutPerHeight);
        }
        return between(((RiseProfile) rise).points(), height);
    }

    /** Largest acceleration asked of the deck [m/s²]. */
    public double deckAcceleration(double nutPerHeight) {
        if (rise instanceof SteadyRise steady) {
            return steady.acceleration();
        }
        if (rise instanceof SteadyTurning turning) {
            return turning.acceleration() / train.motorSpeed(nutPerHeight);
        }
        return ((RiseProfile) rise).acceleration();
    }

    private static double between(List<RisePoint> points, double height) {
        RisePoint below = points.get(0);
        for (RisePoint above : points) {
            if (above.height() >= height) {
                double gap = above.height() - below.height();
                double share = gap == 0 ? 0 : (height - below.height()) / gap;
                return below.speed() + Math.max(0, share) * (above.speed() - below.speed());
            }
            below = above;
        }
        return below.speed();
    }
}
