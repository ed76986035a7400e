// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Carrier;
import foldwright.gantry.route.CrossShaft;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Wheel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Rotors, motors and shafts of a model, each kind as an array and as a chain for the step. */
final class RotorSet {
    /** Mass at the pitch radius given to an axle that states no inertia, so that it steps [kg]. */
    private static final double LEAST_MASS = 0.005;

    /** By axle, in the order of {@code BeltSystem.axleNames()}. */
    final Rotor[] rotors;

    final FieldMotor[] motors;
    final ShaftSpring[] shafts;

    /** What belt ends without an axle turn: it stands still for ever. */
    final Rotor still = new Rotor(1, 0, 0);

    private final Rotor firstRotor;
    private final Rotor firstFree;
    private final FieldMotor firstMotor;
    private final ShaftSpring firstShaft;
    private final double shaftDamping;

    /** Torque of the fields that stand on bridge and carriage, reversed sign [N m]. */
    private double onBridge;

    private double onCarriage;

    RotorSet(BeltSystem system, GantryModel model, MotionRelation relation, RidingLoad riding) {
        int count = system.axleNames().size();
        double[] inertia = new double[count];
        double[] drag = new double[count];
        double[] radius = new double[count];
        addWheels(system, model, inertia, drag, radius);
        for (AxisMotor m : model.motors()) {
            inertia[system.axle(m.axle())] += m.rotorInertia();
            drag[system.axle(m.axle())] += m.drag();
        }
        for (int i = 0; i < count; i++) {
            double own = inertia[i] > 0 ? inertia[i] : LEAST_MASS * radius[i] * radius[i];
            inertia[i] = own + riding.axleInertia(i);
            drag[i] += riding.axleDrag(i);
        }
        MirrorImages.equalise(inertia);
        MirrorImages.equalise(drag);
        rotors = new Rotor[count];
        for (int i = count - 1; i >= 0; i--) {
            rotors[i] = new Rotor(inertia[i], drag[i], model.damping().belt());
            rotors[i].perX = relation.anglePerX(i);
            rotors[i].perY = relation.anglePerY(i);
            rotors[i].next = i + 1 < count ? rotors[i + 1] : null;
        }
        MirrorImages.equalise(rotors);
        motors = new FieldMotor[model.motors().size()];
        for (int i = motors.length - 1; i >= 0; i--) {
            AxisMotor m = model.motors().get(i);
            motors[i] = new FieldMotor(m, rotors[system.axle(m.axle())]);
            motors[i].next = i + 1 < motors.length ? motors[i + 1] : null;
        }
        shafts = shafts(system, model);
        firstRotor = rotors.length == 0 ? null : rotors[0];
        firstFree = chainFree();
        firstMotor = motors.length == 0 ? null : motors[0];
        firstShaft = shafts.length == 0 ? null : shafts[0];
        shaftDamping = model.damping().guide();
    }

    /** Rotors without a motor; those with one are walked with their motors. */
    private Rotor chainFree() {
        Set<Rotor> driven = Arrays.stream(motors).map(m -> m.rotor).collect(Collectors.toSet());
        Rotor chain = null;
        for (int i = rotors.length - 1; i >= 0; i--) {
            if (!driven.contains(rotors[i])) {
                rotors[i].nextFree = chain;
                chain = rotors[i];
            }
        }
        return chain;
    }

    /** Tells the motors a way from the middle of the travel and a speed [m, m/s]. */
    void command(double dx, double dy, double vx, double vy) {
        for (FieldMotor m = firstMotor; m != null; m = m.next) {
            m.tell(dx, dy, vx, vy);
        }
    }

    /** Torques of bearings, fields and shafts on the rotors for a step of h. */
    void evaluate(double h, double bridgeYaw, double carriageYaw) {
        for (Rotor r = firstFree; r != null; r = r.nextFree) {
            r.driven = -r.friction(h);
        }
        double bridge = 0;
        double carriage = 0;
        for (FieldMotor m = firstMotor; m != null; m = m.next) {
            double t = m.pull(lag(m, bridgeYaw, carriageYaw), m.rotor.friction(h));
            bridge += m.body == Carrier.BRIDGE ? t : 0;
            carriage += m.body == Carrier.CARRIAGE ? t : 0;
        }
        onBridge = bridge;
        onCarriage = carriage;
        for (ShaftSpring s = firstShaft; s != null; s = s.next) {
            s.evaluate(shaftDamping);
        }
    }

    /** Electrical angle by which a field is before its rotor, bodies turned by their yaws [rad]. */
    static double lag(FieldMotor m, double bridgeYaw, double carriageYaw) {
        return m.lag(
                m.body == Carrier.BASE ? 0 : m.body == Carrier.BRIDGE ? bridgeYaw : carriageYaw);
    }

    /** One step of h with the torques of the last evaluation [s]. */
    void advance(double h) {
        for (Rotor r = firstRotor; r != null; r = r.next) {
            r.advance(h);
        }
    }

    double onBridge() {
        return onBridge;
    }

    double onCarriage() {
        return onCarriage;
    }

    private ShaftSpring[] shafts(BeltSystem system, GantryModel model) {
        List<ShaftSpring> list = new ArrayList<>();
        for (CrossShaft s : model.layout().shafts()) {
            if (!Double.isInfinite(s.stiffness())) {
                Rotor first = rotors[system.axle(s.first())];
                list.add(new ShaftSpring(first, rotors[system.axle(s.second())], s.stiffness()));
            }
        }
        for (int i = 1; i < list.size(); i++) {
            list.get(i - 1).next = list.get(i);
        }
        return list.toArray(ShaftSpring[]::new);
    }

    private static void addWheels(
            BeltSystem system,
            GantryModel model,
            double[] inertia,
            double[] drag,
            double[] radius) {
        for (Belt belt : model.layout().belts()) {
            for (RoutePoint point : belt.points()) {
                if (point instanceof Wheel wheel && system.axle(wheel) >= 0) {
                    int axle = system.axle(wheel);
                    inertia[axle] += wheel.inertia();
                    drag[axle] += wheel.drag();
                    radius[axle] = radius[axle] > 0 ? radius[axle] : wheel.radius();
                }
            }
        }
        for (int i = 0; i < radius.length; i++) {
            radius[i] = radius[i] > 0 ? radius[i] : 0.01;
        }
    }

    /** Numbers that {@link #save} writes. */
    int savedSize() {
        return 7 * rotors.length + 3 * motors.length;
    }

    /** Writes states and last results from a place in an array on; gives the next place. */
    int save(double[] out, int from) {
        int at = from;
        for (Rotor r : rotors) {
            out[at++] = r.angle;
            out[at++] = r.rate;
            out[at++] = r.acceleration;
            out[at++] = r.bristle;
            out[at++] = r.driven;
            out[at++] = r.predicted;
            out[at++] = r.ahead;
        }
        for (FieldMotor m : motors) {
            out[at++] = m.command;
            out[at++] = m.commandRate;
            out[at++] = m.torque;
        }
        return at;
    }

    /** Takes back what {@link #save} wrote; gives the next place. */
    int restore(double[] in, int from) {
        int at = from;
        for (Rotor r : rotors) {
            r.angle = in[at++];
            r.rate = in[at++];
            r.acceleration = in[at++];
            r.bristle = in[at++];
            r.driven = in[at++];
            r.predicted = in[at++];
            r.ahead = in[at++];
        }
        for (FieldMotor m : motors) {
            m.restore(in[at], in[at + 1], in[at + 2]);
            at += 3;
        }
        return at;
    }
}
