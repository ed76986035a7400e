// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.lift.LiftNames;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.spring.AtPins;
import foldwright.machine.spring.Contact;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.TorsionAtFlat;
import foldwright.machine.spring.TorsionCoil;
import foldwright.viewer.mesh.CoilMesh;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import org.joml.Matrix4x3f;

/**
 * Torsion springs at pins: a coil round the pin with one leg along the arm and one on what holds
 * the pin. A touched spring that has let go keeps its legs at the free angle, so a gap is seen.
 */
final class TorsionParts {
    private final LiftShape shape;
    private final PartList out;
    private final SpringMotion motion;

    TorsionParts(LiftShape shape, PartList out, SpringMotion motion) {
        this.shape = shape;
        this.out = out;
        this.motion = motion;
    }

    /** Where a spring sits: see {@link SpringMotion.Leg}. */
    private record Seat(
            int arm, double along, int armSense, int holder, int holderSense, int angles) {}

    private Seat seat(PinPlace place) {
        int n = shape.stages();
        double length = shape.arm().length();
        boolean over = shape.deckFixedOverFixed();
        return switch (place) {
            case BASE_FIXED -> new Seat(out.bodies.rising(1), 0, 1, -1, 1, 1);
            case BASE_SLIDER -> new Seat(out.bodies.falling(1), 0, 1, -1, -1, 1);
            case CENTRE ->
                    new Seat(
                            out.bodies.rising(1),
                            shape.arm().centrePin() * length,
                            1,
                            out.bodies.falling(1),
                            -1,
                            2);
            case JUNCTION ->
                    new Seat(out.bodies.rising(Math.min(2, n)), 0, 1, out.bodies.falling(1), -1, 2);
            case DECK_FIXED ->
                    over
                            ? new Seat(out.bodies.falling(n), length, -1, -1, 1, 1)
                            : new Seat(out.bodies.rising(n), length, -1, -1, -1, 1);
            case DECK_SLIDER ->
                    over
                            ? new Seat(out.bodies.rising(n), length, -1, -1, -1, 1)
                            : new Seat(out.bodies.falling(n), length, -1, -1, 1, 1);
        };
    }

    void add(HelperSpring spring, AtPins pins) {
        double wire = 0.0025;
        double mean = 0.016;
        double turns = 5;
        if (spring.law() instanceof TorsionAtFlat t) {
            wire = t.wire().orElse(wire);
            mean = t.meanDiameter().orElse(mean);
            turns = t.activeCoils().orElse(turns);
        } else if (spring.law() instanceof TorsionCoil t) {
            wire = t.wire();
            mean = t.meanDiameter();
            turns = t.activeCoils();
        }
        double width = (turns + 1) * wire;
        Mesh coil = CoilMesh.of(new Mesh.Coil(turns + 2, mean / 2, mean / 2, wire / 2));
        int index = 1;
        for (PinPlace place : pins.at()) {
            Seat seat = seat(place);
            for (int side = -1; side <= 1; side += 2) {
                String name = LiftNames.spring(spring.name(), index++);
                double y = side > 0 ? shape.inside() - 0.003 - width : -shape.inside() + 0.003;
                int channel = out.newChannel();
                motion.fixed(channel, width);
                Matrix4x3f local =
                        PartList.at(seat.along, y + width, 0).rotateX((float) (Math.PI / 2));
                out.add(name, PartKind.SPRING, coil, seat.arm, local, channel, 1);
                legs(spring, pins, name, seat, new double[] {mean, wire, y, y + width});
            }
        }
    }

    private void legs(HelperSpring spring, AtPins pins, String name, Seat seat, double[] size) {
        double mean = size[0];
        double wire = size[1];
        double reach = Math.min(2.2 * mean, 0.4 * shape.arm().length());
        // One leg leaves the coil above the pin, the other below it.
        Mesh upper = leg(reach, wire, mean / 2, size[3] - wire / 2);
        out.add(
                name,
                PartKind.SPRING,
                upper,
                seat.arm,
                seat.armSense > 0
                        ? PartList.at(seat.along, 0, 0)
                        : PartList.at(seat.along, 0, 0).rotateY((float) Math.PI));
        Mesh lower = leg(reach, wire, -mean / 2, size[2] + wire / 2);
        int body = out.bodies.of("leg of " + name);
        out.add(name, PartKind.SPRING, lower, body);
        double free =
                spring.contact() == Contact.TOUCHING
                        ? pins.freeAngle() * seat.angles
                        : Double.POSITIVE_INFINITY;
        motion.add(
                new SpringMotion.Leg(
                        body,
                        seat.arm,
                        seat.along,
                        seat.armSense,
                        seat.holder,
                        seat.holderSense,
                        free));
    }

    private static Mesh leg(double reach, double wire, double z, double y) {
        return new Solid().zone(Zone.SPRING).at(0, y, z).alongX().bar(wire / 2, 0, reach, 8).mesh();
    }
}
