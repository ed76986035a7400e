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

/** Forces and values marked on the machine. */
final class LoadMarks {
    private static final double GRAVITY = 9.80665;

    private static final String SCREW = LiftNames.screw(1);
    private static final SheetPainter.Point DOWN = new SheetPainter.Point(0, 0, -1);
    private static final SheetPainter.Point INWARDS = new SheetPainter.Point(-1, 0, 0);

    private final MachineScene scene;
    private final Machine machine;
    private final LiftShape.Joints joints;
    private final double weight;
    private final String weightWords;
    private final double screwY;
    private final Vector3f point = new Vector3f();

    LoadMarks(MachineScene scene, Machine machine) {
        this.scene = scene;
        this.machine = machine;
        joints = scene.shape().joints();
        String load = machine.gantryOnDeck().isPresent() ? " deck and gantry" : " deck";
        weight = machine.raisedMass() * GRAVITY;
        weightWords = Numerals.with(weight, Shown.NEWTON) + load;
        screwY = machine.drive().lines().stream().mapToDouble(l -> l.y()).min().orElse(0);
    }

    /** The largest force that is ever marked on the travel [N]. */
    double strongest(Optional<LoadField> screws) {
        return screws.isPresent() ? Math.max(weight, screws.get().end()) : weight;
    }

    /** What weighs on the deck and what the screws push with. */
    List<SheetPainter.Force> forces(Optional<LoadField> screws, double height) {
        scene.shape().solve(height, joints);
        int n = scene.shape().stages();
        double pin = machine.base().pinHeight();
        double middle = (joints.fixedX[n] + joints.slidingX[n]) / 2;
        SheetPainter.Force deck =
                new SheetPainter.Force(
                        new SheetPainter.Point(
                                middle,
                                -machine.deck().width() / 2 * 0.86,
                                pin + height + scene.deckTop()),
                        DOWN,
                        weight,
                        weightWords);
        return screws.isPresent()
                ? List.of(deck, screw(screws.get(), height, joints.slidingX[0], pin))
                : List.of(deck);
    }

    private SheetPainter.Force screw(LoadField field, double height, double foot, double pin) {
        double force = field.at(SCREW, height);
        boolean several = machine.drive().lines().size() > 1;
        return new SheetPainter.Force(
                new SheetPainter.Point(foot, screwY - 0.012, pin),
                INWARDS,
                force,
                Numerals.with(force, Shown.NEWTON) + (several ? " each screw" : " screw"));
    }

    /** The largest load, of a signed field that of each sign, beside its part. */
    List<SheetPainter.Label> labels(
            LoadField field, double height, Optional<GantryLoads> gantry, StrayView stray) {
        if (stray.place() == null) {
            scene.place(height);
        } else {
            scene.place(height, stray.place());
        }
        scene.lean(stray.lean());
        if (!field.signed()) {
            return label(field, height, 0, gantry);
        }
        List<SheetPainter.Label> out = new ArrayList<>(label(field, height, 1, gantry));
        out.addAll(label(field, height, -1, gantry));
        return out;
    }

    private List<SheetPainter.Label> label(
            LoadField field, double height, int sign, Optional<GantryLoads> gantry) {
        Optional<String> most = field.largest(height, sign);
        Part part = most.isPresent() ? longest(field, height, most.get()) : null;
        return part == null ? List.of() : List.of(label(part, field, height, gantry));
    }

    /** Of all parts with this load the first, of belt strands the longest. */
    private Part longest(LoadField field, double height, String most) {
        Part best = null;
        double load = field.at(most, height);
        float length = -1;
        for (int i = 0; i < scene.parts().size(); i++) {
            Part p = scene.parts().get(i);
            boolean same =
                    Math.abs(field.at(p.name(), height) - load) <= LoadField.SAME * Math.abs(load);
            if (field.overlay().on(p.kind()) && same) {
                float here =
                        field.overlay() == Overlay.BELT_TENSION
                                ? scene.pose().body[p.body()].getColumn(0, point).length()
                                : 0;
                if (here > length) {
                    length = here;
                    best = p;
                }
            }
        }
        return best;
    }

    private SheetPainter.Label label(
            Part part, LoadField field, double height, Optional<GantryLoads> gantry) {
        Vector3f at = scene.middle(part, point);
        String words = field.words(field.at(part.name(), height));
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
