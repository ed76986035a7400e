// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.HoldResult;
import foldwright.machine.Machine;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Question;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.Lean;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.sheet.SheetPainter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The deck as it leans, drawn larger by a stated factor, with the ideal deck as a dashed outline:
 * sideways by the pull test (known at the top of the travel), and one side lower than the other
 * where a screw is ahead. Bending of deck and arms is not computed and not drawn.
 */
final class LeanView {
    private static final double MOST_SHIFT = 0.050;
    private static final double MOST_TILT = 0.25;
    private static final double LEVEL = 5e-7;

    private LeanView() {}

    static StrayView of(
            MachineScene scene, Machine machine, Results results, SheetBuilder.Choice choice) {
        GantryMotion.Place home = scene.gantry().map(GantryMotion::home).orElse(null);
        if (choice.question() != Question.LEAN) {
            return StrayView.none(home);
        }
        double height = choice.height();
        boolean top = height > scene.shape().top() - 1e-4;
        Optional<Check> pull =
                results.of(Question.LEAN).stream()
                        .filter(c -> c.outcome().required().unit() == Shown.MILLIMETRE)
                        .findFirst();
        double shift = top ? pull.map(c -> c.outcome().required().si()).orElse(0.0) : 0;
        double droop = results.hold().map(h -> droop(h, height)).orElse(0.0);
        double tilt = droop / machine.lift().width();
        double factor =
                choice.larger() == StrayView.FITTING ? fitting(shift, tilt) : choice.larger();
        Lean lean = new Lean(clip(tilt * factor, MOST_TILT), clip(shift * factor, 2 * MOST_SHIFT));
        boolean upright = shift == 0 && Math.abs(droop) < LEVEL;
        SheetPainter.Stray marks =
                new SheetPainter.Stray(
                        upright ? List.of() : ideal(scene, machine, height),
                        sideways(pull, shift, top),
                        level(results, droop));
        return new StrayView(home, upright ? Lean.NONE : lean, upright ? 1 : factor, marks);
    }

    private static double clip(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }

    /** How much higher the back side of the deck stands than the front at a height [m]. */
    private static double droop(HoldResult hold, double height) {
        List<HoldResult.Point> known =
                hold.points().stream().filter(p -> !Double.isNaN(p.droop())).toList();
        double[] heights = known.stream().mapToDouble(HoldResult.Point::height).toArray();
        double[] droop = known.stream().mapToDouble(HoldResult.Point::droop).toArray();
        return heights.length == 0 ? 0 : Series.of(droop).over(Series.of(heights), height);
    }

    /** The largest of 1, 2, 5, 10... that a picture bears. */
    private static double fitting(double shift, double tilt) {
        double best = 1;
        for (double f : new double[] {2, 5, 10, 20, 50, 100, 200, 500, 1000}) {
            if (Math.abs(shift) * f <= MOST_SHIFT && Math.abs(tilt) * f <= MOST_TILT) {
                best = f;
            }
        }
        return best;
    }

    private static String sideways(Optional<Check> pull, double shift, boolean top) {
        if (pull.isEmpty()) {
            return "sideways lean not known: no pull test in the file";
        }
        return top
                ? "leans "
                        + Numerals.with(shift, Shown.MILLIMETRE)
                        + " when bridge and carriage start"
                : "sideways lean is known at the top only, from the pull test";
    }

    private static String level(Results results, double droop) {
        if (results.hold().isEmpty()) {
            return "level of the two sides: not computed yet";
        }
        String sides =
                Math.abs(droop) < LEVEL
                        ? "both sides level"
                        : (droop > 0 ? "front side " : "back side ")
                                + Numerals.with(Math.abs(droop), Shown.MILLIMETRE)
                                + " lower, a screw is ahead";
        return sides + "; bending of deck and arms is not in it";
    }

    /** Corners of the ideal deck in the world. */
    private static List<SheetPainter.Point> ideal(
            MachineScene scene, Machine machine, double height) {
        LiftShape shape = scene.shape();
        LiftShape.Joints j = shape.joints();
        shape.solve(height, j);
        int n = shape.stages();
        double z = machine.base().pinHeight() + height + scene.deckTop();
        boolean over = shape.deckFixedOverFixed();
        double pinned = over ? j.fixedX[n] : j.slidingX[n];
        double inset = machine.deck().pinInset();
        double length = machine.deck().length();
        double from = pinned + (over ? -inset : inset - length);
        double w = machine.deck().width() / 2;
        double[][] corners = {{from, -w}, {from + length, -w}, {from + length, w}, {from, w}};
        List<SheetPainter.Point> out = new ArrayList<>();
        for (double[] c : corners) {
            out.add(new SheetPainter.Point(c[0], c[1], z));
        }
        return out;
    }
}
