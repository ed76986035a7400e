// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.LiftNames;
import foldwright.machine.Machine;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.sheet.SheetPainter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;

/** Forces and values marked on the machine at one height. */
final class LoadMarks {
    private static final double GRAVITY = 9.80665;

    private final MachineScene scene;
    private final Machine machine;
    private final double height;

    LoadMarks(MachineScene scene, Machine machine, double height) {
        this.scene = scene;
        this.machine = machine;
        this.height = height;
    }

    private double weight() {
        return machine.raisedMass() * GRAVITY;
    }

    /** The largest force that is ever marked on the travel [N]. */
    double strongest(Optional<LoadField> screws) {
        return Math.max(weight(), screws.map(LoadField::end).orElse(0.0));
    }

    /** What weighs on the deck and what the screws push with. */
    List<SheetPainter.Force> forces(Optional<LoadField> screws) {
        List<SheetPainter.Force> out = new ArrayList<>();
        LiftShape.Joints joints = scene.shape().joints();
        scene.shape().solve(height, joints);
        int n = scene.shape().stages();
        double pin = machine.base().pinHeight();
        double middle = (joints.fixedX[n] + joints.slidingX[n]) / 2;
        String load = machine.gantryOnDeck().isPresent() ? " deck and gantry" : " deck";
        out.add(
                new SheetPainter.Force(
                        new SheetPainter.Point(
                                middle,
                                -machine.deck().width() / 2 * 0.86,
                                pin + height + scene.deckTop()),
                        new SheetPainter.Point(0, 0, -1),
                        weight(),
                        Numerals.with(weight(), Shown.NEWTON) + load));
        screws.ifPresent(f -> out.add(screw(f, joints.slidingX[0], pin)));
        return out;
    }

    private SheetPainter.Force screw(LoadField field, double foot, double pin) {
        double force = field.at(LiftNames.screw(1), height);
        boolean several = machine.drive().lines().size() > 1;
        double y = machine.drive().lines().stream().mapToDouble(l -> l.y()).min().orElse(0);
        return new SheetPainter.Force(
                new SheetPainter.Point(foot, y - 0.012, pin),
                new SheetPainter.Point(-1, 0, 0),
                force,
                Numerals.with(force, Shown.NEWTON) + (several ? " each screw" : " screw"));
    }

    /** The largest load, of a signed field that of each sign, beside its part. */
    List<SheetPainter.Label> labels(
            LoadField field, Optional<GantryLoads> gantry, StrayView stray) {
        if (stray.place() == null) {
            scene.place(height);
        } else {
            scene.place(height, stray.place());
        }
        scene.lean(stray.lean());
        List<SheetPainter.Label> out = new ArrayList<>();
        int[] signs = field.signed() ? new int[] {1, -1} : new int[] {0};
        for (int sign : signs) {
            field.largest(height, sign)
                    .flatMap(p -> longest(field, field.at(p, height)))
                    .ifPresent(p -> out.add(label(p, field, gantry)));
        }
        return out;
    }

    /** Of all parts with this load the first, of belt strands the longest. */
    private Optional<Part> longest(LoadField field, double load) {
        Part best = null;
        float length = -1;
        Vector3f size = new Vector3f();
        for (Part p : scene.parts()) {
            boolean same = Math.abs(field.at(p.name(), height) - load) <= 1e-6 * Math.abs(load);
            if (field.overlay().on(p.kind()) && same) {
                float here =
                        field.overlay() == Overlay.BELT_TENSION
                                ? scene.pose().body[p.body()].getColumn(0, size).length()
                                : 0;
                if (here > length) {
                    length = here;
                    best = p;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private SheetPainter.Label label(Part part, LoadField field, Optional<GantryLoads> gantry) {
        Vector3f at = scene.middle(part, new Vector3f());
        String words = Numerals.with(field.at(part.name(), height), field.overlay().unit());
        if (field.overlay() == Overlay.BELT_TENSION) {
            GantryLoads.Tension t = gantry.orElseThrow().tension(part.name()).orElseThrow();
            words =
                    "belt "
                            + Numerals.with(t.total(), Shown.NEWTON)
                            + ", "
                            + Numerals.with(t.rest(), Shown.NEWTON)
                            + " at rest";
        }
        return new SheetPainter.Label(new SheetPainter.Point(at.x, at.y, at.z), words);
    }
}
