// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.StepperDrive;
import java.util.ArrayList;
import java.util.List;

/** Heights, foot stroke, turns, times and step sizes of a machine. */
final class Facts {
    private Facts() {}

    static List<Fact> of(Machine m, ForceCurve curve) {
        List<Fact> out = new ArrayList<>();
        double flat = Bench.flat(m);
        double top = Bench.top(m);
        double arm = m.lift().arm().length();
        double stroke = arm * (Math.cos(Bench.angle(m, flat)) - Math.cos(Bench.angle(m, top)));
        out.add(
                new Fact(
                        "deck pins, flat to top",
                        length(flat) + " to " + length(top),
                        "H = n L sin θ"));
        out.add(
                new Fact(
                        "overall height, folded to open",
                        length(flat + around(m)) + " to " + length(top + around(m)),
                        "base pins + H + top of the deck"));
        out.add(new Fact("foot stroke", length(stroke), "L (cos θ_1 - cos θ_2)"));
        double turns = stroke / m.drive().screw().thread().lead();
        double ratio = m.drive().transmission() instanceof BeltReduction b ? b.teeth().ratio() : 1;
        out.add(
                new Fact(
                        "turns of screw, of " + SourceWords.of(m).noun(),
                        Numerals.number(turns) + ", " + Numerals.number(turns * ratio),
                        "stroke/lead, × belt"));
        if (m.drive().source() instanceof StepperDrive stepper) {
            double step =
                    m.drive().screw().thread().lead() / (stepper.motor().stepsPerTurn() * ratio);
            out.add(
                    new Fact(
                            "height of a full step, flat and top",
                            length(step * gain(m, flat)) + ", " + length(step * gain(m, top)),
                            "lead/(steps × belt) × n/tan θ"));
        }
        double time = time(curve);
        if (Double.isFinite(time)) {
            out.add(
                    new Fact(
                            "time to unfold as asked",
                            Numerals.with(time, Shown.SECOND),
                            "travel over deck speed"));
        }
        return out;
    }

    private static double around(Machine m) {
        return m.base().pinHeight() + m.deck().topAbovePins();
    }

    private static double gain(Machine m, double height) {
        return m.lift().stages() / Math.tan(Bench.angle(m, height));
    }

    private static String length(double metres) {
        return Numerals.with(metres, Shown.MILLIMETRE);
    }

    /** Time to rise through all points of the curve at the speeds asked for [s]. */
    static double time(ForceCurve curve) {
        List<CurvePoint> up = curve.raising();
        double time = 0;
        for (int i = 1; i < up.size(); i++) {
            double v = 0.5 * (up.get(i).at().deckSpeed() + up.get(i - 1).at().deckSpeed());
            time += (up.get(i).height() - up.get(i - 1).height()) / v;
        }
        return up.size() < 2 ? Double.NaN : time;
    }
}
