// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Combination;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import java.util.ArrayList;
import java.util.List;

/**
 * Block of 1 kg on a spring, dragged by a moving belt through dry friction that falls with slip.
 */
public final class StickSlip {
    /** Elastic give of the stuck contact [m/N]; the only regularisation there is. */
    private static final double BRISTLE = 1e-9;

    private final Stepper run;
    private final int block;
    private final Friction friction;

    /**
     * @param rate of the spring [N/m]
     * @param belt speed [m/s]
     * @param sticking largest sticking friction [N]
     * @param law share of it that remains while slipping
     */
    public StickSlip(double rate, double belt, double sticking, Friction.SlipLaw law, double step) {
        Mechanism m = new Mechanism();
        MassProperties mass = new MassProperties(1, Vec3.ZERO, Inertia.principal(1e-3, 1e-3, 1e-3));
        Body b = m.body("block", Pose.ORIGIN, mass);
        Body band = m.body("belt", Pose.ORIGIN, mass);
        m.joint("slide", JointKind.PRISMATIC, m.base(), b, Vec3.ZERO, Vec3.X);
        m.joint("belt guide", JointKind.PRISMATIC, m.base(), band, Vec3.ZERO, Vec3.X);
        Coordinate x = m.travel(m.base(), b, Vec3.ZERO, Vec3.X);
        Coordinate y = m.travel(m.base(), band, Vec3.ZERO, Vec3.X);
        m.law("spring", x, Laws.spring(rate, 0, 0));
        m.drive("belt drive", y, PrescribedMotion.uniform(0, belt, 0));
        Coordinate slip = new Combination(List.of(x, y), 1, -1);
        friction = m.friction("contact", slip, FrictionBound.constant(sticking), BRISTLE);
        friction.slip(law);
        var start = m.start();
        start.move(b, new Vec3(belt, 0, 0), Vec3.ZERO);
        start.move(band, new Vec3(belt, 0, 0), Vec3.ZERO);
        run = new Stepper(m, start, Settings.ofStep(step));
        block = b.index();
    }

    /**
     * Result of a run.
     *
     * @param period from upward passages through the middle of the range [s]
     * @param least smallest position [m]
     * @param most largest position [m]
     * @param creep largest slip of a step that began and ended stuck [m]
     */
    public record Cycle(double period, double least, double most, double creep) {}

    /** Runs for {@code time} [s]; the second half counts. */
    public Cycle run(double time) {
        List<double[]> late = new ArrayList<>();
        double creep = 0;
        boolean wasStuck = false;
        double slipBefore = 0;
        while (run.state().time < time) {
            if (run.step() == Stepper.Outcome.FAILED) {
                return new Cycle(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
            }
            if (run.state().time > 0.5 * time) {
                late.add(new double[] {run.state().time, run.state().x[3 * block]});
            }
            boolean stuck = friction.mode() == Friction.Mode.STICK;
            double slip = friction.coordinate().value(run.state());
            if (stuck && wasStuck) {
                creep = Math.max(creep, Math.abs(slip - slipBefore));
            }
            wasStuck = stuck;
            slipBefore = slip;
        }
        double least = late.stream().mapToDouble(r -> r[1]).min().orElse(Double.NaN);
        double most = late.stream().mapToDouble(r -> r[1]).max().orElse(Double.NaN);
        return new Cycle(period(late, 0.5 * (least + most)), least, most, creep);
    }

    private static double period(List<double[]> late, double middle) {
        double first = Double.NaN;
        double last = Double.NaN;
        int count = -1;
        for (int i = 1; i < late.size(); i++) {
            double[] a = late.get(i - 1);
            double[] b = late.get(i);
            if (a[1] < middle && b[1] >= middle) {
                last = a[0] + (b[0] - a[0]) * (middle - a[1]) / (b[1] - a[1]);
                first = count < 0 ? last : first;
                count++;
            }
        }
        return (last - first) / count;
    }
}
