// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.ArmPart;
import foldwright.lift.Linkage.PinPart;
import foldwright.machine.linkage.ArmName;
import foldwright.machine.linkage.BallBearing;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.Pin;
import foldwright.machine.linkage.PinPlace;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.solve.Equilibrium;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads pin forces, bearing pressures, and bending moment, thrust and stress of the arms, and
 * forces of the helper springs from a balance of loads.
 *
 * <p>Stress is that of a straight beam: bending moment at the centre pin over the section with the
 * pin hole taken out of its depth, plus thrust over the net area. Lateral bending from the offset
 * of the two arms of a cross is left out, and so are stress peaks at the hole.
 */
final class PartLoads {
    private final LiftModel model;
    private final List<PinReader> pins = new ArrayList<>();
    private final List<ArmReader> arms = new ArrayList<>();
    private final List<SpringWire> wires = new ArrayList<>();

    PartLoads(LiftModel model) {
        this.model = model;
        for (PinPart p : model.linkage().pins()) {
            pins.add(new PinReader(p, model.mechanism().bodies().get(p.joint().body(0))));
        }
        double hole = model.machine().lift().pinAt(PinPlace.CENTRE).diameter();
        for (ArmPart a : model.linkage().arms()) {
            NetSection net = NetSection.of(a.arm(), hole);
            arms.add(new ArmReader(a, net, end(a, 0), end(a, 1)));
        }
        model.springs().forEach(p -> wires.add(new SpringWire(p.spring())));
    }

    CurvePoint.Parts read(Equilibrium balance, State s) {
        List<PinLoad> pinLoads = new ArrayList<>(pins.size());
        for (PinReader p : pins) {
            p.read(balance, s);
            pinLoads.add(p.load());
        }
        List<ArmLoad> armLoads = new ArrayList<>(arms.size());
        double gravity = -model.mechanism().gravity().z();
        for (ArmReader a : arms) {
            armLoads.add(a.read(balance, s, gravity));
        }
        return new CurvePoint.Parts(pinLoads, armLoads, springs(s));
    }

    private List<SpringLoad> springs(State s) {
        List<SpringLoad> loads = new ArrayList<>(wires.size());
        for (int i = 0; i < wires.size(); i++) {
            SpringPart p = model.springs().get(i);
            double extent = p.extent(p.along().value(s));
            double force = p.law().force(extent);
            loads.add(
                    new SpringLoad(
                            p.name(),
                            p.law().measure(),
                            force,
                            extent,
                            p.law().freeCoordinate(),
                            wires.get(i).stress(force),
                            wires.get(i).allowed()));
        }
        return loads;
    }

    /** The pin at the lower (0) or upper (1) end of an arm. */
    private PinReader end(ArmPart arm, int upper) {
        boolean fromFixed = arm.kind() == ArmName.FROM_FIXED_END;
        boolean atFixed = fromFixed == (upper == 0);
        int row = arm.stage() - 1 + upper;
        for (PinReader p : pins) {
            if (p.part.side() == arm.side()
                    && p.part.place() != PinPlace.CENTRE
                    && p.part.row() == row
                    && (p.part.end() == Linkage.End.FIXED) == atFixed) {
                return p;
            }
        }
        throw new IllegalStateException("arm \"" + arm.name() + "\" ends without a pin");
    }

    /** Force of a pin in the base frame. */
    private static final class PinReader {
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

        /** Force on the pin's second body. */
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

        /** +1 if the force read acts on that body, -1 if its reaction does. */
        double sign(Body body) {
            return part.joint().body(1) == body.index() ? 1 : -1;
        }

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

    /** Bending and thrust of an arm from the pins at its ends. */
    private static final class ArmReader {
        private final ArmPart part;
        private final PinReader lower;
        private final PinReader upper;
        private final NetSection net;

        ArmReader(ArmPart part, NetSection net, PinReader lower, PinReader upper) {
            this.part = part;
            this.lower = lower;
            this.upper = upper;
            this.net = net;
        }

        ArmLoad read(Equilibrium balance, State s, double gravity) {
            double share = part.arm().centrePin();
            double bottom = bending(lower, share, s, gravity) + turned(lower, balance);
            double top = bending(upper, 1 - share, s, gravity) + turned(upper, balance);
            double bend = Math.max(Math.abs(bottom), Math.abs(top));
            double thrust = axial(lower, s);
            double other = -axial(upper, s);
            double axial = Math.abs(thrust) > Math.abs(other) ? thrust : other;
            return new ArmLoad(part.name(), bend, axial, net.stress(bend, axial));
        }

        /** Force across the arm times the lever, less the weight of that part of the arm. */
        private double bending(PinReader end, double share, State s, double gravity) {
            int r = 9 * part.body().index();
            double wx = s.r[r + 2];
            double wz = s.r[r + 8];
            double across = end.sign(part.body()) * (end.along * wx + end.up * wz);
            double lever = share * part.arm().length();
            double weight = share * part.body().mass().mass() * gravity;
            return lever * (across - 0.5 * weight * wz);
        }

        /** Friction moment of the end pin on the arm. */
        private double turned(PinReader end, Equilibrium balance) {
            double lever = end == lower ? 1 : -1;
            return lever * end.sign(part.body()) * balance.load(end.part.friction());
        }

        /** Force at an end along the arm, towards its upper pin. */
        private double axial(PinReader end, State s) {
            int r = 9 * part.body().index();
            double sign = end.sign(part.body());
            return sign * (end.along * s.r[r] + end.up * s.r[r + 6]);
        }
    }
}
