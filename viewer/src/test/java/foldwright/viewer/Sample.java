// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.lift.ArmLoad;
import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.ForceCurve;
import foldwright.lift.LiftNames;
import foldwright.lift.MotorLoad;
import foldwright.lift.PinLoad;
import foldwright.lift.ScrewLoad;
import foldwright.lift.Shares;
import foldwright.machine.Machine;
import foldwright.study.Amount;
import foldwright.study.Check;
import foldwright.study.CurvePlots;
import foldwright.study.Grounds;
import foldwright.study.HandCard;
import foldwright.study.Outcome;
import foldwright.study.Place;
import foldwright.study.Question;
import foldwright.study.Remedy;
import foldwright.study.Shown;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.session.Results;
import foldwright.viewer.sheet.SheetModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Results of the right shape with made-up smooth numbers, for tests of drawing: no physics is
 * judged by them.
 */
public final class Sample {
    private Sample() {}

    public static Results results(Machine machine) {
        LiftShape shape = new LiftShape(machine);
        List<CurvePoint> points = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double h = shape.flat() + (shape.top() - shape.flat()) * i / 39;
            points.add(point(shape, h, (double) i / 39));
        }
        ForceCurve curve = new ForceCurve(machine.name(), points, points, List.of());
        List<Check> checks = new ArrayList<>();
        for (Question q : Question.values()) {
            checks.add(check(q, shape));
        }
        return new Results(Optional.of(curve), CurvePlots.motor(machine, curve), checks, "");
    }

    private static CurvePoint point(LiftShape shape, double height, double share) {
        List<ArmLoad> arms = new ArrayList<>();
        List<PinLoad> pins = new ArrayList<>();
        for (LiftNames.Side side : LiftNames.Side.values()) {
            for (int s = 1; s <= shape.stages(); s++) {
                double m = 4.0 * (1 - 0.3 * share) / s;
                arms.add(new ArmLoad(LiftNames.risingArm(side, s), m, 30, 1e7));
                arms.add(new ArmLoad(LiftNames.fallingArm(side, s), 0.9 * m, 30, 1e7));
                pins.add(new PinLoad(LiftNames.centrePin(side, s), 100.0 / s, 10, 2e6));
            }
        }
        double need = 0.05 + 0.16 * Math.exp(-8 * (share - 0.3) * (share - 0.3));
        return new CurvePoint(
                new CurvePoint.Pose(Direction.RAISING, height, 0.3, 0.004, 0.01, 3),
                300,
                Shares.NONE,
                new ScrewLoad(190, 0.2, 10, 0.1, 3000, 500, 1e6),
                new MotorLoad(need, 10, 0.28),
                Shares.NONE,
                new CurvePoint.Parts(pins, arms));
    }

    private static Check check(Question q, LiftShape shape) {
        Amount have = Amount.of(0.28, Shown.NEWTON_METRE);
        Outcome outcome =
                Outcome.of(
                        Amount.of(0.09 + 0.04 * q.ordinal(), Shown.NEWTON_METRE),
                        have,
                        Place.at(
                                shape.flat() + 0.3 * (shape.top() - shape.flat()),
                                "where the springs let go"));
        List<Remedy> remedies =
                List.of(
                        new Remedy("belt to screws 3:1", outcome),
                        new Remedy(
                                "grease the thread, friction 0.10, and ball bearings in all pins",
                                outcome),
                        new Remedy("deck 0.5 kg lighter", outcome));
        return new Check(
                "test." + q.ordinal(),
                q,
                new Check.Text("Title", "A finding with 0.21 N·m in it."),
                outcome,
                Grounds.of(new HandCard(List.of(), "")),
                remedies,
                Optional.empty());
    }

    /** Rules as a machine would have them. */
    public static List<SheetModel.Rule> rules() {
        List<SheetModel.Rule> out = new ArrayList<>();
        String[] names = {
            "belt to screws",
            "deck: plate",
            "spring rate, each",
            "thread friction",
            "pin friction",
            "rise speed",
            "arm length"
        };
        for (int i = 0; i < names.length; i++) {
            out.add(
                    new SheetModel.Rule(
                            names[i],
                            "0.155 N/mm",
                            "0.075",
                            "0.195 N/mm",
                            0.15 * i,
                            i == 1 ? Optional.of(0.6) : Optional.empty(),
                            "file 3:1",
                            new SheetModel.Hill(List.of(0.4, 0.9, 1.2, 1.6, 2.4), 1.5)));
        }
        return out;
    }
}
