// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.lift.LiftNames;
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
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.Contact;
import foldwright.machine.spring.GasSpring;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.SpringEnds;
import foldwright.machine.spring.Upright;
import foldwright.viewer.mesh.CoilMesh;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import foldwright.viewer.scene.SpringMotion.End;
import java.util.function.DoubleUnaryOperator;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/** Helper springs: coils that close, gas springs that slide together, torsion coils at pins. */
final class SpringParts {
    private final Machine machine;
    private final LiftShape shape;
    private final PartList out;
    private final double deckUnderside;
    private final SpringMotion motion = new SpringMotion();

    SpringParts(Machine machine, LiftShape shape, PartList out, double deckUnderside) {
        this.machine = machine;
        this.shape = shape;
        this.out = out;
        this.deckUnderside = deckUnderside;
    }

    SpringMotion motion() {
        return motion;
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
                new TorsionParts(shape, out, motion).add(spring, pins);
            }
        }
    }

    private static String name(HelperSpring spring, int index) {
        return LiftNames.spring(spring.name(), index + 1);
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
        pad(to, spring);
        coilBetween(spring, name(spring, index), from, to);
    }

    private void seat(End foot, HelperSpring spring, double above) {
        double radius = SpringShape.radius(spring) * 1.15;
        double guide = spring.guideDiameter().orElse(radius) / 2 * 0.9;
        Solid solid = new Solid().zone(Zone.STEEL).at(foot.at().x, foot.at().y, 0);
        if (above > 0.006) {
            solid.bar(radius, foot.at().z - above + 0.005, foot.at().z, 22);
        }
        double stem = Math.max(0.004, 0.5 * SpringShape.solidLength(spring));
        solid.bar(Math.min(guide, 0.75 * radius), foot.at().z, foot.at().z + stem, 18);
        out.add("spring seat", PartKind.BASE, solid.mesh(), foot.body());
    }

    /**
     * What the spring presses on: a tab of the deck plate from the nearest side, and a clamp round
     * its end where it is fastened.
     */
    private void pad(End top, HelperSpring spring) {
        double r = 1.25 * SpringShape.radius(spring);
        double side = Math.signum(top.at().y) * machine.deck().width() / 2;
        double edge = side - Math.signum(side) * 0.004;
        double inner = top.at().y - Math.signum(side) * r;
        double z = top.at().z;
        Solid solid =
                new Solid()
                        .zone(Zone.FRAME)
                        .plate(
                                top.at().x - r,
                                Math.min(edge, inner),
                                top.at().x + r,
                                Math.max(edge, inner),
                                0.003,
                                z + 0.0004,
                                z + 0.0046);
        if (spring.contact() == Contact.ATTACHED) {
            double wire = 2 * SpringShape.coil(spring).wireRadius();
            solid.zone(Zone.STEEL).at(top.at().x, top.at().y, 0);
            solid.bar(0.6 * r, z - 1.5 * wire, z + 0.0004, 22);
        }
        out.add("spring pad", PartKind.DECK, solid.mesh(), top.body());
    }

    private void atFoot(HelperSpring spring, AtFoot foot, int index) {
        LiftShape.Joints j = shape.joints();
        shape.solve(shape.flat(), j);
        double y = foot.at().get(index);
        double free = SpringShape.freeLength(spring);
        // Squeezed so far when flat, between the slider ends and a stop on the base; it pushes
        // towards the fixed end.
        double stop = j.slidingX[0] + free - foot.squeezeAtFlat();
        End from = new End(out.bodies.of(Bodies.BASE), new Vector3f((float) stop, (float) y, 0));
        End to = new End(out.bodies.of(Bodies.FOOT), new Vector3f(0, (float) y, 0));
        double r = SpringShape.radius(spring) * 1.25;
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
        out.add("spring stop", PartKind.BASE, wall.mesh(), from.body());
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
            gas(gas, name, new SpringMotion.Straight(channel, body, -1, from, to, 1e9, null));
            return;
        }
        Mesh mesh = CoilMesh.of(SpringShape.coil(spring));
        out.add(name, PartKind.SPRING, mesh, body, new Matrix4x3f(), channel, 1);
        boolean touched = spring.contact() == Contact.TOUCHING;
        DoubleUnaryOperator closing = null;
        if (spring.law() instanceof ConicalCoil cone) {
            out.newChannel();
            closing = new ConeClosing(cone)::radius;
        }
        motion.add(
                new SpringMotion.Straight(
                        channel,
                        body,
                        -1,
                        from,
                        to,
                        touched ? SpringShape.freeLength(spring) : Double.POSITIVE_INFINITY,
                        closing));
    }

    /**
     * A tube with its eye at one end, a rod with its eye at the other, one sliding in the other.
     */
    private void gas(GasSpring gas, String name, SpringMotion.Straight at) {
        double eye = 0.006;
        double shortest = gas.extendedLength() - gas.stroke();
        double tube = shortest - 1.5 * eye;
        Solid cylinder = new Solid().zone(Zone.MOTOR).bar(0.0080, eye, tube, 22);
        cylinder.zone(Zone.STEEL).bar(0.0045, tube, tube + 0.004, 16);
        eye(cylinder, eye);
        out.add(name, PartKind.SPRING, cylinder.mesh(), at.body());
        int rod = out.bodies.of("rod of " + name);
        Solid bar = new Solid().zone(Zone.STEEL);
        bar.bar(0.0032, 0.5 * eye, gas.stroke() + 2.5 * eye, 14);
        eye(bar, eye);
        out.add(name, PartKind.SPRING, bar.mesh(), rod);
        motion.add(
                new SpringMotion.Straight(
                        at.channel(), at.body(), rod, at.from(), at.to(), 1e9, null));
    }

    private static void eye(Solid solid, double size) {
        solid.zone(Zone.STEEL).at(0, 0, 0).alongY().ring(size, 0.4 * size, -0.003, 0.003, 18);
        solid.at(0, 0, 0);
    }
}
