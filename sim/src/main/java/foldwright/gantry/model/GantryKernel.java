// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.RouteCheck;

/**
 * Bridge, carriage and rotors in time.
 *
 * <p>Coordinates are absolute: centres of mass and yaw of bridge and carriage, angles of axles. So
 * the mass is diagonal and constant, and a step is explicit: forces at q(n), then v(n+1/2) =
 * v(n-1/2) + h a(n), q(n+1) = q(n) + h v(n+1/2) (leapfrog, second order; L. Verlet, Phys. Rev. 159,
 * 1967, 98). Damping uses v(n-1/2) + h/2 a(n-1) for v(n). Every nonlinearity is continuous and
 * piecewise linear: tension max(0, .), play x - clip(x), friction clip(f + k du, +-F) which truly
 * sticks.
 *
 * <p>The belts' own mass is in it, see {@link RidingLoad}. Left out: changes of strand direction
 * with skew (under 0.05 % of forces at 1 mrad) and waves along the belts.
 *
 * <p>One call of {@link #evaluate} and one of {@link #advance} make a step; between them positions,
 * tensions and forces belong to the same instant. No allocation in either. Stable while the highest
 * angular frequency times h stays under 1.2: see {@link Stability}.
 *
 * <p>Sums are ordered so that a machine that is its own mirror image gives a mirrored toolpath the
 * mirrored motion to the last bit; parts that come in numbers are chains of objects, because loops
 * over arrays of two cost more than their work.
 */
public final class GantryKernel {
    /** Stiffness of a sticking rail [N/m]; see the note on friction in docs/gantry.md. */
    static final double STICK = 1e6;

    /** Steps between two looks at the exact geometry where belt rows change over the travel. */
    private static final int RENEW = 25;

    final GantryModel model;
    final BeltSystem system;
    final MotionRelation relation;
    final RotorSet axles;
    final BeltSprings belts;
    final GuideSprings guide;
    final RidingLoad riding;
    final MovingBody bridge;
    final MovingBody carriage;
    final LegForces legs;
    final CarriageForces rail;
    private final ForceSums sums;

    // From the points to which the places of carriage and bridge refer to their origins [m].
    final double ocx;
    final double ocy;
    final double obx;
    final double oby;
    final double squareness;
    final double guideDamping;
    private final double midX;
    private final double midY;
    private final double toolArmX;
    private final double toolArmY;
    private int sinceRenewal;

    /** Builds the kernel; the carriage stands at the middle of its travel. */
    public GantryKernel(GantryModel model) {
        this.model = model;
        system = new BeltSystem(model.layout(), model.idlers());
        relation = RouteCheck.relation(system);
        riding = RidingLoad.of(model, system, relation);
        axles = new RotorSet(system, model, relation, riding);
        BodyMass moved = riding.balanced(model.carriage());
        belts = new BeltSprings(system, model, moved, axles);
        guide = new GuideSprings(model.bridgeGuide(), model.bridge());
        bridge = riding.bridge(model.bridge());
        carriage = riding.carriage(model.carriage());
        legs = new LegForces(model, guide, riding);
        rail = new CarriageForces(model, moved, riding);
        sums = new ForceSums(belts, rail, legs, axles, model.bridge());
        ocx = -moved.centreX();
        ocy = -moved.centreY();
        obx = -model.bridge().centreX();
        oby = -model.bridge().centreY();
        squareness = model.bridgeGuide().squareness();
        guideDamping = model.damping().guide();
        midX = model.layout().travel().xMid();
        midY = model.layout().travel().yMid();
        toolArmX = ocx + model.tool().x();
        toolArmY = ocy + model.tool().y();
        stand(midX, midY);
    }

    /** Puts the machine square and at rest at a place, rotors on their commands. */
    public void stand(double x, double y) {
        bridge.stand(-obx, y - oby, 0);
        carriage.stand(x - ocx, y - ocy, 0);
        legs.stand();
        rail.stand();
        command(x, y, 0, 0);
        for (FieldMotor m : axles.motors) {
            m.peak = 0;
        }
        for (Rotor r : axles.rotors) {
            r.stand(r.perX * (x - midX) + r.perY * (y - midY));
        }
        renewBelts();
    }

    /** Takes place, rest and commands of another kernel of the same layout. */
    public void standAs(GantryKernel other) {
        stand(midX, midY);
        bridge.stand(other.bridge.x, other.bridge.y, other.bridge.yaw);
        carriage.stand(other.carriage.x, other.carriage.y, other.carriage.yaw);
        for (int i = 0; i < axles.rotors.length; i++) {
            axles.rotors[i].stand(other.axles.rotors[i].angle);
        }
        for (int m = 0; m < axles.motors.length; m++) {
            axles.motors[m].command = other.axles.motors[m].command;
        }
    }

    /** Sets what the motors are told: place and speed of the carriage origin [m, m/s]. */
    public void command(double x, double y, double vx, double vy) {
        axles.command(x - midX, y - midY, vx, vy);
    }

    /** Forces at the present positions; h is the step the friction has moved through [s]. */
    public void evaluate(double h) {
        if (!belts.constant && h > 0 && ++sinceRenewal >= RENEW) {
            renewBelts();
        }
        // First what takes longest from place to force.
        rail.evaluate(bridge, carriage, h);
        axles.evaluate(h, bridge.yaw, carriage.yaw);
        legs.evaluate(bridge, h);
        sums.evaluate(bridge, carriage);
    }

    /** Takes belt rows from the exact geometry here; nothing to do where they are constant. */
    void renewBelts() {
        if (!belts.constant) {
            belts.renew(bridge.x, bridge.y, bridge.yaw, carriage.x, carriage.y, carriage.yaw);
            sinceRenewal = 0;
        }
    }

    /** Electrical angle by which a field is before its rotor [rad]. */
    double lag(FieldMotor m) {
        return RotorSet.lag(m, bridge.yaw, carriage.yaw);
    }

    /** One step of h with the forces of the last evaluation [s]. */
    public void advance(double h) {
        bridge.advance(h);
        carriage.advance(h);
        axles.advance(h);
    }

    public GantryModel model() {
        return model;
    }

    /** Relation of axle angles and the place of the carriage. */
    public MotionRelation relation() {
        return relation;
    }

    /** Belts, with their geometry. */
    public BeltSystem system() {
        return system;
    }

    /** Skew: yaw of the bridge [rad]. */
    public double skew() {
        return bridge.yaw;
    }

    /** Tool across the rails [m, base frame]. */
    public double toolX() {
        return carriage.x + toolArmX - toolArmY * carriage.yaw;
    }

    /** Tool along the rails [m, base frame]. */
    public double toolY() {
        return carriage.y + toolArmY + toolArmX * carriage.yaw;
    }

    public int sections() {
        return belts.springs.length;
    }

    /** Tension of a section at the last evaluation [N]. */
    public double tension(int section) {
        return belts.springs[section].tension;
    }

    public int motors() {
        return axles.motors.length;
    }

    /** Torque of the field on a rotor at the last evaluation [N m]. */
    public double motorTorque(int motor) {
        return axles.motors[motor].torque;
    }

    /** Largest torque of the field on a rotor, by size, since the kernel stood still [N m]. */
    public double peakTorque(int motor) {
        return axles.motors[motor].peak;
    }

    /** Whole periods of four full steps by which a rotor has slipped. */
    public long slippedPeriods(int motor) {
        return Math.round(lag(axles.motors[motor]) / (2 * Math.PI));
    }

    /** Largest angle of a field before its rotor as it stands, electrical [rad]. */
    public double largestLag() {
        double largest = 0;
        for (FieldMotor m : axles.motors) {
            double size = Math.abs(lag(m));
            largest = size > largest ? size : largest;
        }
        return largest;
    }

    /** Yaw moment of the leg rails on the bridge at the last evaluation [N m]. */
    public double guideMoment() {
        return legs.yawMoment();
    }

    /** Force of the bridge rail across itself on the carriage, reversed sign [N]. */
    public double carriageForce() {
        return rail.force();
    }

    /** Yaw moment between bridge rail and carriage [N m]. */
    public double carriageMoment() {
        return rail.moment();
    }

    /** Place of the carriage on the bridge [m]. */
    public double carriagePlace() {
        return rail.place();
    }

    /** Place of the bridge along the rails [m]. */
    public double bridgePlace() {
        return bridge.y + oby + obx * bridge.yaw;
    }

    /** Numbers that {@link #save} writes. */
    public int savedSize() {
        return 2 * MovingBody.SAVED
                + LegForces.SAVED
                + CarriageForces.SAVED
                + axles.savedSize()
                + belts.springs.length
                + 1;
    }

    /** Writes state and results of the last evaluation; allocates nothing. */
    public void save(double[] out) {
        int at = bridge.save(out, 0);
        at = carriage.save(out, at);
        at = legs.save(out, at);
        at = rail.save(out, at);
        at = axles.save(out, at);
        for (BeltSpring s : belts.springs) {
            out[at++] = s.tension;
        }
        out[at] = sinceRenewal;
    }

    /** Takes back what {@link #save} wrote. */
    public void restore(double[] in) {
        int at = bridge.restore(in, 0);
        at = carriage.restore(in, at);
        at = legs.restore(in, at);
        at = rail.restore(in, at);
        at = axles.restore(in, at);
        for (BeltSpring s : belts.springs) {
            s.tension = in[at++];
        }
        sinceRenewal = (int) in[at];
    }
}
