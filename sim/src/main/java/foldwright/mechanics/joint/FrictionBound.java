// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/** Largest friction that a joint's own load allows. */
public interface FrictionBound {
    /** Bound from all multipliers [N for travel, N m for turns, N along a helix]. */
    double bound(double[] lambda);

    /** Rows that the bound depends on; null for a constant one. */
    Rows source();

    /** Independent of any load: dry seal, detent. */
    static FrictionBound constant(double limit) {
        if (!(limit >= 0) || Double.isInfinite(limit)) {
            throw new IllegalArgumentException(
                    "a friction bound is finite and not below 0: " + limit);
        }
        return new FrictionBound() {
            @Override
            public double bound(double[] lambda) {
                return limit;
            }

            @Override
            public Rows source() {
                return null;
            }
        };
    }

    /**
     * Pin in a bush: mu r |radial force| (friction circle), the radial force being that along x and
     * y of a joint that turns about z [N m].
     */
    static FrictionBound pin(PairJoint pin, double mu, double radius) {
        double arm = mu * radius;
        return of(
                pin,
                lambda -> arm * root(pin.load(Freedom.TX, lambda), pin.load(Freedom.TY, lambda)));
    }

    /** Thrust collar of mean radius {@code radius}: mu r |axial force| [N m]. */
    static FrictionBound collar(PairJoint bearing, double mu, double radius) {
        double arm = mu * radius;
        return of(bearing, lambda -> arm * Math.abs(bearing.load(Freedom.TZ, lambda)));
    }

    /**
     * Slider of marker B on a guide along z of A, guided over {@code length} centred on marker B:
     * mu (|N1| + |N2|), N1 and N2 the reactions at the two ends from side force and moment, N = F/2
     * +- M/length in each of the two side directions [N].
     */
    static FrictionBound guide(PairJoint slider, double mu, double length) {
        return of(
                slider,
                lambda -> {
                    double fx = 0.5 * slider.load(Freedom.TX, lambda);
                    double fy = 0.5 * slider.load(Freedom.TY, lambda);
                    double cx = slider.load(Freedom.RY, lambda) / length;
                    double cy = -slider.load(Freedom.RX, lambda) / length;
                    return mu * (root(fx + cx, fy + cy) + root(fx - cx, fy - cy));
                });
    }

    /** Slider without length: mu |side force| [N]. */
    static FrictionBound slide(PairJoint slider, double mu) {
        return of(
                slider,
                lambda ->
                        mu
                                * root(
                                        slider.load(Freedom.TX, lambda),
                                        slider.load(Freedom.TY, lambda)));
    }

    /** A face pressed by the load along one direction of a joint: mu |load| [N]. */
    static FrictionBound face(PairJoint joint, Freedom direction, double mu) {
        return of(joint, lambda -> mu * Math.abs(joint.load(direction, lambda)));
    }

    /** Factor times the load of a coupling row: thread flank (mu'/cos a), belt loss (1 - eta). */
    static FrictionBound transmitted(ScalarRow row, double factor) {
        return of(row, lambda -> factor * Math.abs(lambda[row.rowAt()]));
    }

    /** A load in terms of all multipliers. */
    interface Load {
        double of(double[] lambda);
    }

    private static FrictionBound of(Rows source, Load load) {
        return new FrictionBound() {
            @Override
            public double bound(double[] lambda) {
                return load.of(lambda);
            }

            @Override
            public Rows source() {
                return source;
            }
        };
    }

    private static double root(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }
}
