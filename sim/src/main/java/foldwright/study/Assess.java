// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.SpringStroke;
import foldwright.machine.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Every check there is, on one machine. */
public final class Assess {
    /** Name of the check of the motor over the travel, the plot of which heads a report. */
    public static final String MOTOR = MotorCheck.ID;

    private Assess() {}

    /**
     * Runs all checks.
     *
     * @param runs the computations
     * @param progress told in words what is being done
     */
    public static Assessment machine(Machine machine, Runs runs, Consumer<String> progress) {
        progress.accept("force curve");
        ForceCurve curve = runs.curve(machine);
        progress.accept("holding unpowered");
        Optional<HoldResult> hold = runs.hold(machine);
        List<SpringStroke> strokes = SpringStroke.of(machine);
        List<Check> checks = new ArrayList<>();
        checks.add(motor(machine, curve, runs, progress));
        checks.addAll(unfolding(machine, curve, strokes));
        hold.ifPresent(h -> checks.addAll(new HoldChecks(machine, h).checks()));
        checks.addAll(new RatingChecks(machine, curve, runs).checks());
        checks.addAll(new SpringStrength(machine, strokes).checks());
        checks.addAll(new FitChecks(machine).checks());
        if (machine.gantry().isPresent()) {
            progress.accept("gantry under acceleration");
            GantrySweep sweep = new GantrySweep(machine.gantry().get());
            checks.addAll(new SkewChecks(machine, sweep).checks());
            checks.addAll(new BlockChecks(machine, sweep).checks());
        }
        new LeanCheck(machine).check().ifPresent(checks::add);
        return new Assessment(
                machine,
                checks,
                Cautions.of(machine, curve, hold),
                Facts.of(machine, curve),
                CurveTrust.of(curve));
    }

    /** The checks of whether it leaves the fold, for which a curve is enough; no changes tried. */
    public static List<Check> fold(Machine machine, ForceCurve curve) {
        List<Check> checks = new ArrayList<>();
        checks.add(motor(machine, curve));
        checks.addAll(unfolding(machine, curve, SpringStroke.of(machine)));
        return checks;
    }

    /** What is asked of unfolding beside the motor. */
    private static List<Check> unfolding(
            Machine machine, ForceCurve curve, List<SpringStroke> strokes) {
        List<Check> checks = new ArrayList<>(new SpringChecks(machine, curve, strokes).checks());
        checks.addAll(new JamChecks(machine).checks());
        new TimeCheck(machine).check().ifPresent(checks::add);
        return checks;
    }

    /** The motor's check alone, without changes tried. */
    public static Check motor(Machine machine, ForceCurve curve) {
        return new MotorCheck(machine, curve).check();
    }

    /** The check of holding unpowered alone. */
    public static Check hold(Machine machine, HoldResult hold) {
        return new HoldChecks(machine, hold).thread();
    }

    private static Check motor(
            Machine machine, ForceCurve curve, Runs runs, Consumer<String> progress) {
        Check check = motor(machine, curve);
        if (check.verdict() == Verdict.HOLDS) {
            return check;
        }
        progress.accept("what would change it");
        Remedies remedies =
                new Remedies(
                        machine, check.outcome(), m -> new MotorCheck(m, runs.curve(m)).outcome());
        return check.with(remedies.find(DriveChanges.of(machine)));
    }
}
