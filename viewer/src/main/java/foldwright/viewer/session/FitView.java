// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.machine.Box;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.Lean;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.sheet.SheetPainter;
import java.util.ArrayList;
import java.util.List;

/**
 * The room the machine needs: the inside of its box as dashed edges round it, and in words how far
 * its feet stand apart, folded and open, how tall it gets and how far the tool reaches.
 */
final class FitView {
    private FitView() {}

    static StrayView of(MachineScene scene, Machine machine) {
        GantryMotion.Place home = scene.gantry().map(GantryMotion::home).orElse(null);
        List<SheetPainter.Point> lid = machine.box().map(b -> lid(machine, b)).orElse(List.of());
        SheetPainter.Stray marks =
                new SheetPainter.Stray(lid, feet(scene.shape(), machine), room(scene, machine));
        return new StrayView(home, Lean.NONE, 1, marks);
    }

    /** Upper edge of the box, with its upright edges in front and at the right. */
    private static List<SheetPainter.Point> lid(Machine machine, Box box) {
        double left = -machine.base().pinInset() + (machine.base().length() - box.length()) / 2;
        double right = left + box.length();
        double w = box.width() / 2;
        double h = box.height();
        List<SheetPainter.Point> out = new ArrayList<>();
        double[][] way = {
            {left, -w, 0}, {left, -w, h}, {left, w, h}, {right, w, h}, {right, w, 0},
            {right, w, h}, {right, -w, h}, {right, -w, 0}, {right, -w, h}, {left, -w, h}
        };
        for (double[] p : way) {
            out.add(new SheetPainter.Point(p[0], p[1], p[2]));
        }
        return out;
    }

    /** Distances of the base feet, pin to pin, along and across. */
    private static String feet(LiftShape shape, Machine machine) {
        LiftShape.Joints j = shape.joints();
        shape.solve(shape.flat(), j);
        double folded = j.slidingX[0];
        shape.solve(shape.top(), j);
        return "feet "
                + mm(folded)
                + " apart folded, "
                + mm(j.slidingX[0])
                + " open, "
                + mm(machine.lift().width())
                + " across";
    }

    private static String room(MachineScene scene, Machine machine) {
        double above = machine.base().pinHeight() + machine.deck().topAbovePins();
        String tall =
                mm(scene.shape().flat() + above)
                        + " tall folded, "
                        + mm(scene.shape().top() + above)
                        + " open";
        return machine.gantry().map(g -> tall + "; " + reach(g)).orElse(tall);
    }

    private static String reach(Gantry gantry) {
        return "tool reaches "
                + mm(gantry.bridge().travel().length())
                + " by "
                + mm(gantry.legs().travel().length());
    }

    private static String mm(double metres) {
        return Numerals.fixed(metres * 1000, 0) + "\u00a0" + Shown.MILLIMETRE.symbol();
    }
}
