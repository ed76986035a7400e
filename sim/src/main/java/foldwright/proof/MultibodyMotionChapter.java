// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Linearisation;
import foldwright.mechanics.solve.Mode;
import foldwright.mechanics.solve.Refinement;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Statics;
import foldwright.mechanics.solve.Stepper;
import foldwright.proof.multibody.Andrews;
import foldwright.proof.multibody.Bricard;
import foldwright.proof.multibody.FourBarChain;
import foldwright.proof.multibody.Governor;
import foldwright.proof.multibody.Pendulums;
import foldwright.proof.multibody.ReferenceCurve;
import foldwright.proof.multibody.StickSlip;
import foldwright.proof.multibody.Tops;
import foldwright.proof.multibody.Trajectory;
import java.util.ArrayList;
import java.util.List;

/** Motion in time: published multibody benchmarks, run as bodies in space with all their joints. */
final class MultibodyMotionChapter implements ProofChapter {
    private static final String LIBRARY =
            "multibody benchmark library, University of A Coruna, 2005, problem ";
    private static final String[] ANGLES = {
        "beta", "Theta", "gamma", "Phi", "delta", "Omega", "epsilon"
    };
    private static final double[] AT_30_MS = {
        15.81077119629904,
        -15.75637105984298,
        0.04082224013073101,
        -0.5347301163226948,
        0.5244099658805304,
        0.5347301163226948,
        1.048080741042263
    };

    @Override
    public String title() {
        return "Multibody motion";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> all = new ArrayList<>();
        all.addAll(andrews());
        all.addAll(pendulum());
        for (int loops : new int[] {1, 2, 40}) {
            all.addAll(chain(loops));
        }
        all.addAll(bricard());
        all.addAll(governor());
        all.addAll(doublePendulum());
        all.addAll(freeBodies());
        all.addAll(heavyTop());
        all.addAll(stickSlip());
        return all;
    }

    /** Plain run at 1e-5 s and its refinement with the run at 2e-5 s: (4 fine - coarse) / 3. */
    private static List<ProofValue> andrews() {
        Comparison c =
                new Comparison(
                        "MB-01 squeezing mechanism",
                        1e-8,
                        "Mazzia & Magherini, Test Set for IVP Solvers, problem andrews;"
                                + " Hairer & Wanner, Solving ODEs II, VII.7");
        Refinement fine = Refinement.of(MultibodyMotionChapter::andrewsAngles, 1e-5);
        Refinement coarse = Refinement.of(MultibodyMotionChapter::andrewsAngles, 2e-5);
        for (int i = 0; i < 7; i++) {
            c.near(
                    ANGLES[i] + " at 0.03 s, step 1e-5 s",
                    fine.plain()[i],
                    AT_30_MS[i],
                    1e-3,
                    "rad");
        }
        // the least that a scheme of this kind can have is 1.07e-4: docs/decisions/013
        c.near(
                "largest error of the seven, step 1e-5 s",
                fine.plainGap(AT_30_MS),
                0,
                1.1e-4,
                "rad");
        c.near(
                "largest error of the seven, refined with step 2e-5 s",
                fine.refinedGap(AT_30_MS),
                0,
                1e-5,
                "rad");
        double order = Refinement.order(fine, coarse, 0);
        c.near("order from steps 4, 2, 1e-5 s", order, 2, 0.05, "1");
        double[] start = new Andrews().accelerations(new Andrews().stepper(1e-5).state());
        c.value("start acceleration beta", start[0], 14222.44392, "rad/s2");
        c.value("start acceleration Theta", start[1], -10666.83294, "rad/s2");
        return c.values();
    }

    private static double[] andrewsAngles(double step) {
        Andrews m = new Andrews();
        Stepper run = m.stepper(step);
        run.runTo(0.03);
        return m.angles(run.state());
    }

    private static List<ProofValue> pendulum() {
        ReferenceCurve curve = ReferenceCurve.read("pendulum.csv");
        Pendulums p = new Pendulums(1, Math.PI / 2);
        Comparison c = new Comparison("MB-02 pendulum", 1e-5, LIBRARY + "A01; " + curve.source());
        Stepper run = p.stepper(1e-3);
        double error = Trajectory.deviation(run, curve, 1, 10, s -> p.mass(s, 0));
        c.near("largest position error over 10 s", error, 0, 1e-3, "m");
        c.value("period", period(p), 2.36784194757624, "s");
        return c.values();
    }

    /** Two successive rests on the start side are a period apart. */
    private static double period(Pendulums p) {
        Stepper run = p.stepper(1e-3);
        double before = 0;
        while (true) {
            double t = run.state().time;
            run.step();
            double now = p.rate(run.state(), 0);
            if (t > 0.1 && before > 0 && now <= 0) {
                return t + 1e-3 * before / (before - now);
            }
            before = now;
        }
    }

    private static List<ProofValue> chain(int loops) {
        FourBarChain chain = new FourBarChain(loops);
        Comparison c =
                new Comparison(
                        "MB-03 four-bar chain N = " + loops,
                        1e-3,
                        LIBRARY + "A02; closed form of the parallel motion");
        Stepper run = chain.stepper(Settings.ofStep(1e-3));
        double start = chain.energy(run.state());
        double energy = 0;
        while (run.state().time < 10 - 5e-4 && run.step() == Stepper.Outcome.DONE) {
            energy = Math.max(energy, Math.abs(chain.energy(run.state()) - start));
        }
        if (run.failure() != null) {
            energy = Double.NaN;
        }
        double[][] end = {
            {.478385058, .878150179}, {.328458112, .944518538}, {.180512227, .983572741}
        };
        double[] want = end[loops == 40 ? 2 : loops - 1];
        Vec3 tip = chain.tip(run.state());
        c.near("tip x at 10 s", tip.x(), want[0], 1e-3, "m");
        c.near("tip y at 10 s", tip.y(), want[1], 1e-3, "m");
        double swing = 2 * start - 2 * 0.5 * (0.5 / 3 * 2 * (loops + 1) + loops);
        c.near("largest energy error", energy, 0, Math.min(0.022, 1e-3 * swing), "J");
        double solves = (double) run.solves() / run.steps();
        c.near("solves a step beyond one", solves - 1, 0, 0.1, "1");
        if (loops > 1) {
            ReferenceCurve curve = ReferenceCurve.read("four-bar-chain-" + loops + ".csv");
            double error =
                    Trajectory.deviation(
                            chain.stepper(Settings.ofStep(1e-3)), curve, 1, 10, s -> tip(chain, s));
            double allowed = loops == 40 ? 2.2e-4 : 2.5e-4;
            c.near("largest position error over 10 s", error, 0, allowed, "m");
        }
        return c.values();
    }

    private static double[] tip(FourBarChain chain, State s) {
        Vec3 tip = chain.tip(s);
        return new double[] {tip.x(), tip.y()};
    }

    private static List<ProofValue> bricard() {
        Bricard b = new Bricard();
        ReferenceCurve curve = ReferenceCurve.read("bricard.csv");
        Stepper run = b.stepper(1e-3);
        double error = Trajectory.deviation(run, curve, 1, 10, b::node3);
        Comparison c = new Comparison("MB-04 Bricard", 1e-3, LIBRARY + "A04; " + curve.source());
        c.near("largest error of P3 over 10 s", error, 0, 1.2e-5, "m");
        double energy = run.ledger().kinetic() + run.ledger().height();
        c.near("energy at 10 s", energy, -29.43, 0.03, "J");
        return c.values();
    }

    private static List<ProofValue> governor() {
        Governor g = new Governor();
        ReferenceCurve curve = ReferenceCurve.read("governor.csv");
        Stepper run = g.stepper(1e-3);
        double error = Trajectory.deviation(run, curve, 1, 10, g::readings);
        Comparison c = new Comparison("MB-05 governor", 1e-6, LIBRARY + "A05; " + curve.source());
        c.near("largest error of angle, depth, rate over 10 s", error, 0, 1e-3, "1");
        c.near("slider depth at 10 s", g.readings(run.state())[1], .4125447018, 1e-3, "m");
        c.value("angular momentum", g.angularMomentum(run.state()), 48.0978542123, "kg m2/s");
        return c.values();
    }

    private static List<ProofValue> doublePendulum() {
        ReferenceCurve curve = ReferenceCurve.read("double-pendulum.csv");
        Pendulums p = new Pendulums(2, Math.PI / 2);
        Stepper run = p.stepper(1e-3);
        double error = Trajectory.deviation(run, curve, 5, 3, s -> p.mass(s, 1));
        run.runTo(5);
        Comparison c = new Comparison("MB-08 double pendulum", 1e-8, curve.source());
        c.near("largest error of mass 2 to 3 s", error, 0, 1e-3, "m");
        c.near("energy at 5 s", p.energy(run.state()), 0, 1e-3, "J");
        Pendulums hanging = new Pendulums(2, 0);
        Equilibrium rest =
                new Statics(hanging.mechanism()).frictionless(hanging.mechanism().start());
        List<Mode> modes = new Linearisation(hanging.mechanism(), rest).modes(2);
        c.value("first mode", Math.sqrt(modes.get(0).omega2()), 2.3971993979, "rad/s");
        c.value("second mode", Math.sqrt(modes.get(1).omega2()), 5.7873512980, "rad/s");
        return c.values();
    }

    private static List<ProofValue> freeBodies() {
        ReferenceCurve a = ReferenceCurve.read("free-rotation-a.csv");
        ReferenceCurve b = ReferenceCurve.read("free-rotation-b.csv");
        Comparison c = new Comparison("MB-09 free rotation", 1e-3, a.source());
        Stepper runA = Tops.free(new Vec3(.5, 2, 3), new Vec3(1, 0, .9), 1e-3);
        Stepper runB = Tops.free(new Vec3(1, 1.8, 2.4), new Vec3(.01, 2, .01), 1e-3);
        double errorA = Trajectory.deviation(runA, a, 1, 20, Tops::rates);
        double errorB = Trajectory.deviation(runB, b, 1, 30, Tops::rates);
        c.near("A: largest rate error to 20 s", errorA, 0, 1e-5, "rad/s");
        c.near("B (near the unstable axis): to 30 s", errorB, 0, 1e-2, "rad/s");
        return c.values();
    }

    private static List<ProofValue> heavyTop() {
        ReferenceCurve curve = ReferenceCurve.read("heavy-top.csv");
        Comparison c =
                new Comparison(
                        "MB-10 heavy top",
                        1e-4,
                        curve.source()
                                + "; steady condition: Goldstein, Classical Mechanics"
                                + " (from memory)");
        double error = Trajectory.deviation(Tops.heavy(0, 1e-4), curve, 1, 1, Tops::axis);
        c.near("largest axis error to 1 s", error, 0, 1e-3, "1");
        for (double precession : new double[] {1.6571224065, 122.4728934768}) {
            Stepper run = Tops.heavy(precession, 1e-4);
            double worst = 0;
            while (run.state().time < 0.5) {
                run.step();
                double lean = Math.acos(Tops.axis(run.state())[2]);
                worst = Math.max(worst, Math.abs(lean - Math.toRadians(25)));
            }
            c.near("steady cone at " + precession + " rad/s", worst, 0, 1e-4, "rad");
        }
        return c.values();
    }

    private static List<ProofValue> stickSlip() {
        StickSlip.Cycle coulomb = new StickSlip(400, .05, 8, v -> 5. / 8, 1e-3).run(8);
        Comparison a =
                new Comparison(
                        "MB-11 stick-slip, two coefficients", 5e-3, "closed form, vibration texts");
        a.value("period", coulomb.period(), 0.489254688119, "s");
        a.near("least position", coulomb.least(), .004594305850, 1e-4, "m");
        a.near("greatest position", coulomb.most(), .020405694150, 1e-4, "m");
        StickSlip.Cycle falling = new StickSlip(1, .2, 1, v -> 1 / (1 + 3 * v), 1e-3).run(60);
        Comparison b =
                new Comparison(
                        "MB-11 stick-slip, falling friction",
                        5e-3,
                        "Leine, van Campen, de Kraker, van den Steen, Nonlinear Dynamics 16 (1998)"
                                + " 41-54");
        b.value("period", falling.period(), 12.00103129483, "s");
        b.near("greatest position", falling.most(), 1.133944669704, 1e-3, "m");
        b.near("creep a step while stuck", falling.creep(), 0, 0.01 * .2 * 1e-3, "m");
        List<ProofValue> all = new ArrayList<>(a.values());
        all.addAll(b.values());
        return all;
    }
}
