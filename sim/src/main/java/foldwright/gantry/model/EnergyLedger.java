// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Where the energy of a run goes: kinetic and spring energy, what the fields put in, what friction
 * and damping turn into heat. Works are summed with the velocity at the instant of the force,
 * v(n-1/2) + h/2 a(n), by the trapezoidal rule. Friction counts as heat in full; the energy of
 * sticking bristles, under 2 microjoule, comes back through it.
 *
 * <p>The spring energy of a belt takes its stiffness EA/L as it is at that place; that L changes
 * along the way is not the derivative of an energy, and leaves a small closing error that does not
 * fall with the step.
 */
public final class EnergyLedger {
    private final GantryKernel k;
    private final GuideEnergy guides;
    private double startEnergy = Double.NaN;
    private double closing;
    private double fieldWork;
    private double fieldTurned;
    private double heat;
    private double lastField;
    private double lastShaftPower;
    private double lastHeat;
    private double shaftWork;
    private boolean started;

    public EnergyLedger(GantryKernel kernel) {
        k = kernel;
        guides = new GuideEnergy(kernel);
    }

    /** Takes in an instant after its evaluation and before the kernel advances by h [s]. */
    public void add(double h) {
        double field = 0;
        double shaft = 0;
        for (FieldMotor m : k.axles.motors) {
            double carried =
                    switch (m.body) {
                        case BASE -> 0;
                        case BRIDGE -> yawRate(h);
                        case CARRIAGE -> carriageYawRate(h);
                    };
            field += m.torque * m.commandRate;
            shaft += m.torque * (rate(m.rotor, h) - carried);
        }
        double lost = heatPower(h);
        double stored = kinetic(h) + springs();
        if (!started) {
            started = true;
            startEnergy = stored;
        } else {
            fieldWork += 0.5 * h * (field + lastField);
            fieldTurned += 0.5 * h * Math.abs(field + lastField);
            shaftWork += 0.5 * h * (shaft + lastShaftPower);
            heat += 0.5 * h * (lost + lastHeat);
        }
        lastField = field;
        lastShaftPower = shaft;
        lastHeat = lost;
        closing = shaftWork - heat - (stored - startEnergy);
    }

    private double at(double v, double force, double mass, double h) {
        return v + 0.5 * h * force / mass;
    }

    private double yawRate(double h) {
        return at(k.bridge.vyaw, k.bridge.moment, k.bridge.inertia, h);
    }

    private double carriageYawRate(double h) {
        return at(k.carriage.vyaw, k.carriage.moment, k.carriage.inertia, h);
    }

    private double rate(Rotor r, double h) {
        return at(r.rate, r.torque(), r.inertia, h);
    }

    private double kinetic(double h) {
        double sum =
                half(k.bridge.massX, at(k.bridge.vx, k.bridge.fx, k.bridge.massX, h))
                        + half(k.bridge.massY, at(k.bridge.vy, k.bridge.fy, k.bridge.massY, h))
                        + half(k.bridge.inertia, yawRate(h))
                        + half(
                                k.carriage.massX,
                                at(k.carriage.vx, k.carriage.fx, k.carriage.massX, h))
                        + half(
                                k.carriage.massY,
                                at(k.carriage.vy, k.carriage.fy, k.carriage.massY, h))
                        + half(k.carriage.inertia, carriageYawRate(h));
        for (Rotor r : k.axles.rotors) {
            sum += half(r.inertia, rate(r, h));
        }
        return sum;
    }

    private static double half(double mass, double speed) {
        return 0.5 * mass * speed * speed;
    }

    /** Energy in belts, guides, sticking friction and shafts, of the elastic parts alone [J]. */
    private double springs() {
        double sum = beltEnergy() + guides.stored();
        for (ShaftSpring s : k.axles.shafts) {
            sum += half(s.stiffness, s.first.angle - s.second.angle);
        }
        return sum;
    }

    private double beltEnergy() {
        double sum = half(k.belts.pretensionStiffness, k.bridge.yaw);
        for (BeltSpring s : k.belts.springs) {
            double stiffness = stiffness(s);
            double elastic = elastic(s);
            sum += (elastic * elastic - s.pretension * s.pretension) / (2 * stiffness);
        }
        return sum;
    }

    /** Tension without damping [N]. */
    private double elastic(BeltSpring s) {
        return Math.max(0, s.pretension + stiffness(s) * extension(s));
    }

    /** Power of friction and damping [W]. */
    private double heatPower(double h) {
        double ux = at(k.bridge.vx, k.bridge.fx, k.bridge.massX, h);
        double uy = at(k.bridge.vy, k.bridge.fy, k.bridge.massY, h);
        double ut = yawRate(h);
        double cx = at(k.carriage.vx, k.carriage.fx, k.carriage.massX, h);
        double cy = at(k.carriage.vy, k.carriage.fy, k.carriage.massY, h);
        double ct = carriageYawRate(h);
        double power = guides.heat(h, ux, uy, ut, cx, cy, ct);
        for (Rotor r : k.axles.rotors) {
            power += r.bristle * rate(r, h);
        }
        for (ShaftSpring s : k.axles.shafts) {
            double turning = s.first.predicted - s.second.predicted;
            power +=
                    s.stiffness * k.guideDamping * turning * (rate(s.first, h) - rate(s.second, h));
        }
        for (BeltSpring s : k.belts.springs) {
            double speed =
                    s.g0 * ux
                            + s.g1 * uy
                            + s.g2 * ut
                            + s.g3 * cx
                            + s.g4 * cy
                            + s.g5 * ct
                            + end(s.start, s.startArm, h)
                            + end(s.end, s.endArm, h);
            power += (s.tension - elastic(s)) * speed;
        }
        return power;
    }

    private double end(Rotor rotor, double arm, double h) {
        return arm == 0 ? 0 : arm * rate(rotor, h);
    }

    private double extension(BeltSpring s) {
        return s.offset
                + s.g0 * k.bridge.x
                + s.g1 * k.bridge.y
                + s.g2 * k.bridge.yaw
                + s.g3 * k.carriage.x
                + s.g4 * k.carriage.y
                + s.g5 * k.carriage.yaw
                + s.startArm * s.start.angle
                + s.endArm * s.end.angle;
    }

    private double stiffness(BeltSpring s) {
        return s.ea / s.length(k.carriagePlace(), k.bridge.y + k.oby);
    }

    /** Work of the turning fields so far [J]. */
    public double fieldWork() {
        return fieldWork;
    }

    /** Work of the fields, both signs counted as positive [J]. */
    public double fieldTurned() {
        return fieldTurned;
    }

    /** Heat so far [J]. */
    public double heat() {
        return heat;
    }

    /** Input minus heat minus what is stored: 0 in an exact run [J]. */
    public double closingError() {
        return closing;
    }
}
