// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Question;
import foldwright.study.Shown;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.Lean;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.sheet.SheetPainter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/**
 * The bridge as it skews in the worst case of the skew check, drawn larger by a stated factor, with
 * the square bridge as a dashed outline.
 */
final class SkewView {
    private static final double MOST = 0.25;

    private SkewView() {}

    static StrayView of(
            MachineScene scene, Machine machine, Results results, SheetBuilder.Choice choice) {
        GantryMotion.Place home = scene.gantry().map(GantryMotion::home).orElse(null);
        GantryMotion.Place worst = results.gantry().map(GantryLoads::pose).orElse(home);
        Optional<Check> check =
                choice.question() == Question.SKEW && machine.gantry().isPresent()
                        ? results.of(Question.SKEW).stream().filter(SkewView::isLength).findFirst()
                        : Optional.empty();
        if (check.isEmpty()) {
            return StrayView.none(home);
        }
        Gantry gantry = machine.gantry().get();
        double end = check.get().outcome().required().si();
        double angle = end / gantry.legs().span();
        double larger = choice.larger() == StrayView.FITTING ? fitting(angle) : choice.larger();
        double sign = worst.skew() == 0 ? -1 : Math.signum(worst.skew());
        double drawn = sign * Math.min(MOST, angle * larger);
        String title = "skew " + Numerals.with(end, Shown.MILLIMETRE) + " end to end";
        String second =
                Numerals.with(angle, Shown.MILLIRADIAN)
                        + ", "
                        + results.gantry().map(GantryLoads::words).orElse("starting")
                        + " at "
                        + Numerals.with(
                                gantry.moves().acceleration(), Shown.METRE_PER_SECOND_SQUARED);
        return new StrayView(
                new GantryMotion.Place(worst.x(), worst.y(), drawn),
                Lean.NONE,
                larger,
                new SheetPainter.Stray(ideal(scene, gantry, home, choice.height()), title, second));
    }

    private static boolean isLength(Check check) {
        return check.outcome().required().unit() == Shown.MILLIMETRE;
    }

    /** The largest power of ten that keeps the drawn angle under the most a picture bears. */
    private static double fitting(double angle) {
        double factor = 1;
        while (factor < 1000 && angle * factor * 10 <= MOST) {
            factor *= 10;
        }
        return factor;
    }

    /** Corners of the square bridge in the world. */
    private static List<SheetPainter.Point> ideal(
            MachineScene scene, Gantry gantry, GantryMotion.Place home, double height) {
        scene.place(height);
        Matrix4x3f frame = scene.gantry().orElseThrow().frame(scene.pose());
        float half = (float) (gantry.legs().span() / 2 + 1.6 * gantry.legs().guide().size());
        float wide = (float) (gantry.bridge().section().map(s -> s.width()).orElse(0.020) / 2);
        float z =
                (float)
                        (1.12 * gantry.legs().guide().size()
                                + 0.004
                                + gantry.bridge().section().map(s -> s.depth()).orElse(0.014));
        List<SheetPainter.Point> out = new ArrayList<>();
        float[][] corners = {{-half, -wide}, {half, -wide}, {half, wide}, {-half, wide}};
        for (float[] c : corners) {
            Vector3f p = frame.transformPosition(new Vector3f(c[0], (float) home.y() + c[1], z));
            out.add(new SheetPainter.Point(p.x, p.y, p.z));
        }
        return out;
    }
}
