// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.Machine;
import foldwright.machine.linkage.Anchor;
import foldwright.machine.linkage.OnArm;
import foldwright.machine.linkage.OnBase;
import foldwright.machine.linkage.OnDeck;
import foldwright.machine.linkage.OnSlider;
import foldwright.machine.linkage.Side;
import foldwright.machine.linkage.SliderLevel;
import foldwright.machine.part.Spot;
import foldwright.machine.spring.AtFoot;
import foldwright.machine.spring.AtPins;
import foldwright.machine.spring.BetweenPoints;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.GasSpring;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.SpringEnds;
import foldwright.machine.spring.Upright;
import foldwright.viewer.mesh.CoilMesh;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import java.util.ArrayList;
import java.util.List;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/** Helper springs: coils that close, gas springs that slide together, torsion coils at pins. */
final class SpringParts {
    /** A spring whose length follows the pose: how its channel is filled. */
    record Moving(int channel, int body, End from, End to, double freeLength, Held held) {}

    /** Whether a touched coil keeps its free length when the other end has left it. */
    enum Held {
        AT_BOTH_ENDS,
        AT_ITS_FOOT
    }

    /** A point on a body. */
    record End(int body, Vector3f at) {}

    private final Machine machine;
    private final LiftShape shape;
    private final PartList out;
    private final double deckUnderside;
    private final List<Moving> moving = new ArrayList<>();

    SpringParts(Machine machine, LiftShape shape, PartList out, double deckUnderside) {
        this.machine = machine;
        this.shape = shape;
        this.out = out;
        this.deckUnderside = deckUnderside;
    }

    List<Moving> moving() {
        return moving;
    }

    void add() {
        for (HelperSpring spring : machine.springs()) {
            if (spring.place() instanceof Upright upright) {
                for (int i = 0; i < upright.at().size(); i++) {
                    upright(spring, upright, i);
                }
            } else if (spring.place() instanceof AtFoot foot) {
                for (int i = 0; i < foot.at().size(); i++) {
                    atFoot(spring, foot, i);
                }
            } else if (spring.place() instanceof BetweenPoints between) {
                for (int i = 0; i < between.ends().size(); i++) {
                    between(spring, between.ends().get(i), i);
                }
            } else if (spring.place() instanceof AtPins pins) {
                torsion(spring, pins);
            }
        }
    }

    private static String name(HelperSpring spring, int index) {
        return spring.count() == 1 ? spring.name() : spring.name() + " " + (index + 1);
    }

    private void upright(HelperSpring spring, Upright upright, int index) {
        Spot spot = upright.at().get(index);
        // The spring has the pivot height plus the gap; what the plates leave over is packed below.
        double foot =
                Math.max(-machine.base().pinHeight() + 0.005, deckUnderside - upright.gapAtPins());
        End from =
                new End(
                        out.bodies.of(Bodies.BASE),
                        new Vector3f((float) spot.x(), (float) spot.y(), (float) foot));
        LiftShape.Joints j = shape.joints();
        shape.solve(shape.flat(), j);
        int n = shape.stages();
        double deckX = shape.deckFixedOverFixed() ? j.fixedX[n] : j.slidingX[n];
        End to =
                new End(
                        out.bodies.of(Bodies.DECK),
                        new Vector3f(
                                (float) (spot.x() - deckX),
                                (float) spot.y(),
                                (float) (foot + upright.gapAtPins())));
        seat(from, spring, foot + machine.base().pinHeight());
        coilBetween(spring, name(spring, index), from, to);
    }

    private void seat(End foot, HelperSpring spring, double above) {
        double radius = radius(spring) * 1.15;
        double guide = spring.guideDiameter().orElse(radius) / 2 * 0.9;
        Solid solid = new Solid().zone(Zone.STEEL).at(foot.at.x, foot.at.y, 0);
        if (above > 0.006) {
            solid.bar(radius, foot.at.z - above + 0.005, foot.at.z, 22);
        }
        double stem = Math.max(0.004, 0.5 * solidLength(spring));
        solid.bar(Math.min(guide, 0.75 * radius), foot.at.z, foot.at.z + stem, 18);
        out.add("spring seat", PartKind.BASE, solid.mesh(), foot.body);
    }

    private void atFoot(HelperSpring spring, AtFoot foot, int index) {
        LiftShape.Joints j = shape.joints();
        shape.solve(shape.flat(), j);
        double y = foot.at().get(index);
        double free = freeLength(spring);
        // Squeezed so far when flat, between the slider ends and a stop on the base; it pushes
        // towards the fixed end.
        double stop = j.slidingX[0] + free - foot.squeezeAtFlat();
        End from = new End(out.bodies.of(Bodies.BASE), new Vector3f((float) stop, (float) y, 0));
        End to = new End(out.bodies.of(Bodies.FOOT), new Vector3f(0, (float) y, 0));
        double r = radius(spring) * 1.25;
        Solid wall =
                new Solid()
                        .zone(Zone.FRAME)
                        .box(
                                stop,
                                y - r,
                                0.005 - machine.base().pinHeight(),
                                stop + 0.006,
                                y + r,
                                Math.min(r, machine.base().pinHeight()));
        out.add("spring stop", PartKind.BASE, wall.mesh(), from.body);
        coilBetween(spring, name(spring, index), from, to);
    }

    private void between(HelperSpring spring, SpringEnds ends, int index) {
        coilBetween(spring, name(spring, index), end(ends.from()), end(ends.to()));
    }

    private End end(Anchor anchor) {
        if (anchor instanceof OnBase b) {
            return new End(out.bodies.of(Bodies.BASE), point(b.at().x(), b.at().y(), b.at().z()));
        }
        if (anchor instanceof OnDeck d) {
            return new End(out.bodies.of(Bodies.DECK), point(d.at().x(), d.at().y(), d.at().z()));
        }
        if (anchor instanceof OnSlider s) {
            String body = s.level() == SliderLevel.BASE ? Bodies.FOOT : Bodies.DECK_SLIDER;
            return new End(out.bodies.of(body), point(s.at().x(), s.at().y(), s.at().z()));
        }
        OnArm a = (OnArm) anchor;
        boolean rising = a.arm() == foldwright.machine.linkage.ArmName.FROM_FIXED_END;
        int side = a.side() == Side.BACK ? 1 : -1;
        int body = rising ? out.bodies.rising(a.stage()) : out.bodies.falling(a.stage());
        return new End(body, point(a.along(), shape.armY(side, !rising), 0));
    }

    private static Vector3f point(double x, double y, double z) {
        return new Vector3f((float) x, (float) y, (float) z);
    }

    private void coilBetween(HelperSpring spring, String name, End from, End to) {
        int channel = out.newChannel();
        int body = out.bodies.of("spring " + channel);
        if (spring.law() instanceof GasSpring gas) {
            double tube = gas.extendedLength() - gas.stroke() - 0.01;
            Mesh mesh =
                    new Solid()
                            .zone(Zone.MOTOR)
                            .bar(0.0075, 0, tube, 20)
                            .zone(Zone.STEEL)
                            .bar(0.003, tube, tube + 0.012, 14)
                            .mesh();
            out.add(name, PartKind.SPRING, mesh, body);
            moving.add(
                    new Moving(channel, body, from, to, gas.extendedLength(), Held.AT_BOTH_ENDS));
            return;
        }
        Mesh mesh = CoilMesh.of(coil(spring));
        out.add(name, PartKind.SPRING, mesh, body, new Matrix4x3f(), channel, 1);
        boolean touched = spring.contact() == foldwright.machine.spring.Contact.TOUCHING;
        moving.add(
                new Moving(
                        channel,
                        body,
                        from,
                        to,
                        freeLength(spring),
                        touched ? Held.AT_ITS_FOOT : Held.AT_BOTH_ENDS));
    }

    private static double radius(HelperSpring spring) {
        if (spring.law() instanceof ConicalCoil cone) {
            return cone.largeDiameter() / 2;
        }
        if (spring.law() instanceof RatedCoil rated) {
            return rated.meanDiameter().orElse(0.3 * rated.freeLength()) / 2;
        }
        return spring.law() instanceof Coil coil ? coil.meanDiameter() / 2 : 0.008;
    }

    private static double freeLength(HelperSpring spring) {
        if (spring.law() instanceof ConicalCoil cone) {
            return cone.freeLength();
        }
        if (spring.law() instanceof RatedCoil rated) {
            return rated.freeLength();
        }
        return spring.law() instanceof Coil coil ? coil.freeLength() : 0.05;
    }

    private static double solidLength(HelperSpring spring) {
        if (spring.law() instanceof RatedCoil rated) {
            return rated.solidLength();
        }
        return spring.law() instanceof Coil coil ? coil.closedLength() : 0.01;
    }

    private static Mesh.Coil coil(HelperSpring spring) {
        if (spring.law() instanceof ConicalCoil cone) {
            return new Mesh.Coil(
                    cone.activeCoils() + 2,
                    cone.largeDiameter() / 2,
                    cone.smallDiameter() / 2,
                    cone.wire() / 2);
        }
        if (spring.law() instanceof Coil coil) {
            return new Mesh.Coil(
                    coil.activeCoils() + 2,
                    coil.meanDiameter() / 2,
                    coil.meanDiameter() / 2,
                    coil.wire() / 2);
        }
        RatedCoil rated = (RatedCoil) spring.law();
        double r = radius(spring);
        // A spring known by its rate alone is drawn with turns that just close at its solid length.
        double wire = rated.wire().orElse(Math.min(r * 0.45, rated.solidLength() / 6));
        return new Mesh.Coil(Math.max(4, rated.solidLength() / wire), r, r, wire / 2);
    }

    /** A short coil round a pin, drawn with its legs; it turns with the arm and is not bent. */
    private void torsion(HelperSpring spring, AtPins pins) {
        double wire = 0.0025;
        double mean = 0.016;
        double turns = 5;
        if (spring.law() instanceof foldwright.machine.spring.TorsionAtFlat t) {
            wire = t.wire().orElse(wire);
            mean = t.meanDiameter().orElse(mean);
            turns = t.activeCoils().orElse(turns);
        } else if (spring.law() instanceof foldwright.machine.spring.TorsionCoil t) {
            wire = t.wire();
            mean = t.meanDiameter();
            turns = t.activeCoils();
        }
        double width = turns * wire + wire;
        Mesh coil = CoilMesh.of(new Mesh.Coil(turns + 2, mean / 2, mean / 2, wire / 2));
        int index = 0;
        for (var place : pins.at()) {
            for (int side = -1; side <= 1; side += 2) {
                int channel = out.newChannel();
                int body = torsionBody(place);
                double y = side > 0 ? shape.inside() - 0.003 - width : -shape.inside() + 0.003;
                double x =
                        place == foldwright.machine.linkage.PinPlace.CENTRE
                                ? shape.arm().centrePin() * shape.arm().length()
                                : 0;
                Matrix4x3f local = PartList.at(x, y + width, 0).rotateX((float) (Math.PI / 2));
                out.add(name(spring, index++), PartKind.SPRING, coil, body, local, channel, 1);
                moving.add(new Moving(channel, -1, null, null, width, Held.AT_BOTH_ENDS));
            }
        }
    }

    private int torsionBody(foldwright.machine.linkage.PinPlace place) {
        return switch (place) {
            case BASE_SLIDER -> out.bodies.falling(1);
            case DECK_FIXED -> out.bodies.falling(shape.stages());
            case DECK_SLIDER -> out.bodies.rising(shape.stages());
            case JUNCTION -> out.bodies.rising(Math.min(2, shape.stages()));
            default -> out.bodies.rising(1);
        };
    }

    /** Writes where each spring stands and how long it is. */
    static void place(List<Moving> springs, Pose pose) {
        Vector3f a = new Vector3f();
        Vector3f b = new Vector3f();
        for (Moving m : springs) {
            if (m.body < 0) {
                pose.channel[m.channel] = m.freeLength;
                continue;
            }
            pose.body[m.from.body].transformPosition(m.from.at, a);
            pose.body[m.to.body].transformPosition(m.to.at, b);
            double length = a.distance(b);
            b.sub(a).normalize();
            pose.body[m.body].translation(a);
            turnZTo(pose.body[m.body], b);
            pose.channel[m.channel] =
                    m.held == Held.AT_ITS_FOOT ? Math.min(length, m.freeLength) : length;
        }
    }

    private static void turnZTo(Matrix4x3f m, Vector3f axis) {
        if (axis.z > 0.9999f) {
            return;
        }
        Vector3f side = Math.abs(axis.z) < 0.9f ? new Vector3f(0, 0, 1) : new Vector3f(1, 0, 0);
        Vector3f x = side.cross(axis, new Vector3f()).normalize();
        Vector3f y = axis.cross(x, new Vector3f());
        m.mul(new Matrix4x3f(x.x, x.y, x.z, y.x, y.y, y.z, axis.x, axis.y, axis.z, 0, 0, 0));
    }
}
