// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.PinPart;
import foldwright.machine.linkage.BallBearing;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.Pin;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.solve.Equilibrium;

/** Reads the force of a pin on its second body, in the base frame; holds what was read last. */
final class PinReader {
    private final PinPart part;
    private final int carrier;
    private final Vec3 x;
    private final Vec3 y;
    private double along;
    private double up;

    PinReader(PinPart part, Body carrier) {
        this.part = part;
        this.carrier = 9 * carrier.index();
        var back = carrier.start().attitude().inverse();
        x = back.apply(Vec3.X);
        y = back.apply(Vec3.Z.times(-1));
    }

    void read(Equilibrium balance, State s) {
        double fx = balance.load(part.joint(), Freedom.TX);
        double fy = balance.load(part.joint(), Freedom.TY);
        double px = fx * x.x() + fy * y.x();
        double py = fx * x.y() + fy * y.y();
        double pz = fx * x.z() + fy * y.z();
        double[] r = s.r;
        along = r[carrier] * px + r[carrier + 1] * py + r[carrier + 2] * pz;
        up = r[carrier + 6] * px + r[carrier + 7] * py + r[carrier + 8] * pz;
    }

    PinPart part() {
        return part;
    }

    /** Along the machine, from the fixed to the sliding feet [N]. */
    double along() {
        return along;
    }

    /** Upward [N]. */
    double up() {
        return up;
    }

    /** +1 if the force read acts on that body, -1 if its reaction does. */
    double sign(Body body) {
        return part.joint().body(1) == body.index() ? 1 : -1;
    }

    /** Force, pressure and use of what was read. */
    PinLoad load() {
        Pin pin = part.pin();
        double force = Math.hypot(along, up);
        if (pin.bearing() instanceof Bush bush) {
            double pressure = force / (pin.diameter() * bush.length());
            double use =
                    bush.allowedPressure().isPresent()
                            ? pressure / bush.allowedPressure().getAsDouble()
                            : 0;
            return new PinLoad(part.name(), along, up, pressure, use);
        }
        BallBearing ball = (BallBearing) pin.bearing();
        double use =
                ball.staticRating().isPresent()
                        ? force / (ball.count() * ball.staticRating().getAsDouble())
                        : 0;
        double pressure = force / (pin.diameter() * pin.spacing());
        return new PinLoad(part.name(), along, up, pressure, use);
    }
}
