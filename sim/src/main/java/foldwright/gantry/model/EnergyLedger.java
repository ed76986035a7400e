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
        for (int m = 0; m < k.axles.motors; m++) {
            int body = k.axles.motorBody[m];
            double carried = body < 0 ? 0 : body == 2 ? yawRate(h) : carriageYawRate(h);
            field += k.motorTorque[m] * k.commandRate[m];
            shaft += k.motorTorque[m] * (axleRate(k.axles.motorAxle[m], h) - carried);
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
        return at(k.vth, k.fth, k.inertiaB, h);
    }

    private double carriageYawRate(double h) {
        return at(k.vtc, k.ftc, k.inertiaC, h);
    }

    private double axleRate(int a, double h) {
        return at(k.rate[a], k.torque[a], k.axles.inertia[a], h);
    }

    private double kinetic(double h) {
        double sum =
                half(k.massXb, at(k.vxb, k.fxb, k.massXb, h))
                        + half(k.massYb, at(k.vyb, k.fyb, k.massYb, h))
                        + half(k.inertiaB, yawRate(h))
                        + half(k.massXc, at(k.vxc, k.fxc, k.massXc, h))
                        + half(k.massYc, at(k.vyc, k.fyc, k.massYc, h))
                        + half(k.inertiaC, carriageYawRate(h));
        for (int a = 0; a < k.axles.count; a++) {
            sum += half(k.axles.inertia[a], axleRate(a, h));
        }
        return sum;
    }

    private static double half(double mass, double speed) {
        return 0.5 * mass * speed * speed;
    }

    /** Energy in belts, guides, sticking friction and shafts, of the elastic parts alone [J]. */
    private double springs() {
        double sum = beltEnergy() + guides.stored();
        for (int s = 0; s < k.axles.shafts; s++) {
            double twist = k.angle[k.axles.shaftFirst[s]] - k.angle[k.axles.shaftSecond[s]];
            sum += half(k.axles.shaftStiffness[s], twist);
        }
        return sum;
    }

    private double beltEnergy() {
        BeltArrays b = k.belts;
        double sum = half(b.pretensionStiffness, k.th);
        for (int i = 0; i < b.count; i++) {
            double stiffness = stiffness(i);
            double elastic = Math.max(0, b.pretension[i] + stiffness * extension(i));
            double before = b.pretension[i];
            sum += (elastic * elastic - before * before) / (2 * stiffness);
        }
        return sum;
    }

    /** Power of friction and damping [W]. */
    private double heatPower(double h) {
        double ux = at(k.vxb, k.fxb, k.massXb, h);
        double uy = at(k.vyb, k.fyb, k.massYb, h);
        double ut = yawRate(h);
        double cx = at(k.vxc, k.fxc, k.massXc, h);
        double cy = at(k.vyc, k.fyc, k.massYc, h);
        double ct = carriageYawRate(h);
        double power = guides.heat(h, ux, uy, ut, cx, cy, ct);
        for (int a = 0; a < k.axles.count; a++) {
            power += k.bristle[a] * axleRate(a, h);
        }
        power += shaftHeat(h);
        BeltArrays b = k.belts;
        for (int i = 0; i < b.count; i++) {
            double elastic = Math.max(0, b.pretension[i] + stiffness(i) * extension(i));
            int at = 6 * i;
            double speed =
                    b.row[at] * ux
                            + b.row[at + 1] * uy
                            + b.row[at + 2] * ut
                            + b.row[at + 3] * cx
                            + b.row[at + 4] * cy
                            + b.row[at + 5] * ct;
            speed += end(b.startAxle[i], b.startArm[i], h) + end(b.endAxle[i], b.endArm[i], h);
            power += (k.tension[i] - elastic) * speed;
        }
        return power;
    }

    private double shaftHeat(double h) {
        double power = 0;
        for (int s = 0; s < k.axles.shafts; s++) {
            int a = k.axles.shaftFirst[s];
            int b = k.axles.shaftSecond[s];
            power +=
                    k.axles.shaftStiffness[s]
                            * k.guideDamping
                            * (k.predicted[a] - k.predicted[b])
                            * (axleRate(a, h) - axleRate(b, h));
        }
        return power;
    }

    private double end(int axle, double arm, double h) {
        return axle < k.axles.count ? arm * axleRate(axle, h) : 0;
    }

    private double extension(int i) {
        BeltArrays b = k.belts;
        int at = 6 * i;
        return b.offset[i]
                + b.row[at] * k.xb
                + b.row[at + 1] * k.yb
                + b.row[at + 2] * k.th
                + b.row[at + 3] * k.xc
                + b.row[at + 4] * k.yc
                + b.row[at + 5] * k.tc
                + b.startArm[i] * k.angle[b.startAxle[i]]
                + b.endArm[i] * k.angle[b.endAxle[i]];
    }

    private double stiffness(int i) {
        BeltArrays b = k.belts;
        double y = k.yb - k.model.bridge().centreY();
        return b.ea[i] / (b.length0[i] + b.lengthX[i] * k.carriagePlace + b.lengthY[i] * y);
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
